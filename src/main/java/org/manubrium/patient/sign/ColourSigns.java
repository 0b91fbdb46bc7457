package org.manubrium.patient.sign;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;
import org.manubrium.patient.vessel.SkinColour;
import org.manubrium.patient.vessel.SkinColour.Supply;
import org.manubrium.patient.vessel.SkinFlow;

/**
 * The colour of skin, nail beds, lids, the whites of the eyes and the tongue. What the skin's own colour hides is not found:
 * then another place is to be looked at.
 */
final class ColourSigns {
    private static final String UNIT = "%";

    private ColourSigns() {}

    static Map<String, QuantitySign> all() {
        return Stream.of("face", "lips", "tongue", "lid", "white", "palm", "nails")
                .collect(Collectors.toMap(tissue -> tissue, ColourSigns::sign));
    }

    private static QuantitySign sign(String tissue) {
        return QuantitySign.chosen(spot -> word(spot, tissue), spot -> shown(spot, tissue));
    }

    private static SkinColour colour(Spot spot, String tissue) {
        return SkinColour.of(spot.body(), tissue, supply(spot.body(), tissue, spot.side()));
    }

    private static String word(Spot spot, String tissue) {
        SkinColour usual = SkinColour.usual(spot.body(), tissue);
        return colour(spot, tissue).against(usual, spot.body()).entrySet().stream()
                .filter(seen -> seen.getValue() >= 1)
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("own");
    }

    private static Supply supply(Body body, String tissue, Side side) {
        return switch (tissue) {
            case "face", "lips" -> Supply.flowing(body, held(body, SkinFlow.open(body)), SkinFlow.open(body));
            case "palm" ->
                Supply.flowing(
                        body,
                        held(body, SkinFlow.open(body)) * (1 + body.quantity("palm.redness")),
                        SkinFlow.open(body));
            case "nails" -> {
                double flow = SkinFlow.hand(body, side).share();
                yield Supply.flowing(body, held(body, flow), flow);
            }
            default -> Supply.flowing(body, 1, 1);
        };
    }

    /** Slow blood still fills the small vessels in part. */
    private static double held(Body body, double flow) {
        double rest = body.physiology().constant("colour.held-without-flow");
        return rest + (1 - rest) * flow;
    }

    private static Appearance shown(Spot spot, String tissue) {
        SkinColour here = colour(spot, tissue);
        SkinColour beside = SkinColour.usual(spot.body(), tissue);
        return new Appearance(
                "skin-colour",
                List.of(),
                List.of(
                        light("red, here", here.red()),
                        light("green, here", here.green()),
                        light("blue, here", here.blue()),
                        light("red, beside", beside.red()),
                        light("green, beside", beside.green()),
                        light("blue, beside", beside.blue())),
                "");
    }

    private static Appearance.Measure light(String label, double share) {
        return Spot.measure(label, 100 * share, UNIT);
    }
}
