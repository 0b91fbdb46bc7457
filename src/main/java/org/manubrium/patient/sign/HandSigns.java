package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.QuantitySign.atMost;
import static org.manubrium.patient.sign.QuantitySign.chosen;
import static org.manubrium.patient.sign.QuantitySign.graded;
import static org.manubrium.patient.sign.QuantitySign.measured;
import static org.manubrium.patient.sign.Spot.measure;

import java.util.List;
import java.util.Map;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.vessel.SkinFlow;

/** What the hands tell: nails, palm, warmth, the return of colour, and whether they hold still. */
final class HandSigns {
    private static final double GOLDEN = 0.6180339887498949;

    private HandSigns() {}

    static Map<String, QuantitySign> all() {
        return Map.of(
                "nail-angle", nailAngle(),
                "nails", nails(),
                "palm-cord", palmCord(),
                "flap", flap(),
                "warmth", warmth(),
                "refill", refill(),
                "fold", fold(),
                "finger-skin", fingerSkin(),
                "tendon-lumps", lumps());
    }

    private static QuantitySign nailAngle() {
        return measured(
                1,
                spot -> spot.of("nail.angle"),
                spot -> new Appearance(
                        "nail-profile",
                        List.of(),
                        List.of(
                                measure("from the fold to the nail", Math.rint(spot.of("nail.angle")), "degrees"),
                                measure(
                                        "depth of the fingertip at the fold, for 10 mm at the last joint",
                                        10
                                                * (0.9
                                                        + 0.008
                                                                * (spot.of("nail.angle")
                                                                        - spot.constant("nail.angle-usual"))),
                                        "mm")),
                        ""),
                atMost("nail.angle-most"));
    }

    private static QuantitySign nails() {
        return chosen(
                HandSigns::nail,
                spot -> new Appearance(
                        "nails",
                        List.of(),
                        List.of(
                                measure("middle lies below the edges", spot.of("nail.spoon"), "mm"),
                                measure("pits on all ten", Math.rint(spot.of("nail.pits")), ""),
                                measure("white part of the nail bed", 100 * white(spot), "%"),
                                measure("dark red streaks on all ten", Math.rint(spot.of("nail.streaks")), ""),
                                measure("nail lifted off its bed", spot.of("nail.lifted"), "mm")),
                        ""));
    }

    private static String nail(Spot spot) {
        if (spot.of("nail.streaks") >= spot.constant("nail.streaks-from")) {
            return "streaked";
        }
        if (spot.of("nail.spoon") >= spot.constant("nail.spoon-from")) {
            return "hollow";
        }
        if (spot.of("nail.pits") >= spot.constant("nail.pits-from")) {
            return "pitted";
        }
        return white(spot) >= spot.constant("nail.white-from") ? "white" : "smooth";
    }

    /** Low albumin whitens the bed below the nail. */
    private static double white(Spot spot) {
        double lacks = spot.constant("nail.albumin") - spot.of("blood.albumin");
        return Math.max(0.08, Math.min(0.95, lacks / spot.constant("nail.albumin-span")));
    }

    private static QuantitySign palmCord() {
        return measured(
                5,
                spot -> spot.of("palm.@side.cord"),
                spot -> new Appearance(
                        "palm-cord",
                        List.of(),
                        List.of(
                                measure("ring finger stays bent by", spot.of("palm.@side.cord"), "degrees"),
                                measure("cord in the palm stands out", spot.of("palm.@side.cord") / 12, "mm")),
                        ""),
                atMost("palm.cord-most"));
    }

    /** How far what the liver, the kidneys or the lungs leave in the blood clouds the brain, 0..1. */
    static double poisoned(Spot spot) {
        double gas = (spot.of("blood.carbon-dioxide") - spot.constant("flap.carbon-dioxide-from"))
                / spot.constant("flap.carbon-dioxide-span");
        return Math.max(0, Math.min(1, Math.max(gas, spot.of("blood.toxins"))));
    }

    private static QuantitySign flap() {
        return chosen(
                spot -> poisoned(spot) >= spot.constant("flap.from") ? "drops" : "holds",
                spot -> new Appearance("outstretched-hands", List.of(wrist(spot)), List.of(), ""));
    }

    /** The wrist bent back for a quarter of a minute; each lapse lasts less than a fifth of a second. */
    private static Appearance.Curve wrist(Spot spot) {
        double clouded = poisoned(spot);
        int lapses = clouded >= spot.constant("flap.from") ? (int) Math.round(4 + 16 * clouded) : 0;
        return LimbNumbers.curve("wrist bent back", "degrees", 40, 375, t -> {
            double angle = 55 + 0.6 * LimbNumbers.uneven(3 * t);
            for (int i = 1; i <= lapses; i++) {
                double since = t - 14.5 * (i * GOLDEN % 1);
                if (since > 0 && since < 0.5) {
                    angle -= 32 * (since < 0.15 ? since / 0.15 : Math.exp(-(since - 0.15) / 0.08));
                }
            }
            return Math.max(0, angle);
        });
    }

    private static QuantitySign warmth() {
        return graded("skin-warmth", spot -> flow(spot).warmth(), HandSigns::warmthShown);
    }

    static Appearance warmthShown(Spot spot) {
        return new Appearance(
                "skin-warmth",
                List.of(),
                List.of(measure("skin", flow(spot).warmth(), "°C"), measure("the examiner's hand", 32.5, "°C")),
                "");
    }

    private static SkinFlow flow(Spot spot) {
        return spot.manoeuvre().part().endsWith("foot")
                ? SkinFlow.foot(spot.body(), spot.side())
                : SkinFlow.hand(spot.body(), spot.side());
    }

    private static QuantitySign refill() {
        return measured(0.1, spot -> flow(spot).refill(), HandSigns::refillShown, atMost("flow.refill-normal"));
    }

    /** The share of the colour that is back, from the moment the finger is lifted; all but a twentieth counts as all. */
    static Appearance refillShown(Spot spot) {
        double seconds = flow(spot).refill();
        return new Appearance(
                "blanch",
                List.of(LimbNumbers.curve("colour back", "%", 100, 121, t -> 100 * (1 - Math.exp(-3 * t / seconds)))),
                List.of(),
                "");
    }

    private static QuantitySign fold() {
        return measured(
                0.1,
                HandSigns::foldSeconds,
                spot -> new Appearance(
                        "skin-fold",
                        List.of(LimbNumbers.curve(
                                "fold stands", "mm", 100, 101, t -> 12 * Math.exp(-3 * t / foldSeconds(spot)))),
                        List.of(),
                        ""),
                atMost("fold.most"));
    }

    private static double foldSeconds(Spot spot) {
        double years = Math.max(0, spot.body().person().age() - spot.constant("fold.age"));
        return spot.constant("fold.seconds")
                + years * spot.constant("fold.per-year")
                + spot.constant("fold.dry") * spot.of("tissue.dryness");
    }

    private static QuantitySign fingerSkin() {
        return chosen(
                spot -> spot.of("skin.tightness") >= spot.constant("skin.tight-from") ? "tight" : "soft",
                spot -> new Appearance(
                        "finger-skin",
                        List.of(),
                        List.of(
                                measure("fold that can be lifted", 7 * (1 - 0.9 * spot.of("skin.tightness")), "mm"),
                                measure("fingers stay bent by", 55 * spot.of("skin.tightness"), "degrees")),
                        ""));
    }

    private static QuantitySign lumps() {
        return chosen(
                spot -> spot.of("tendon.lumps") >= spot.constant("tendon.lumps-from") ? "lumps" : "smooth",
                spot -> new Appearance(
                        "tendon-lumps",
                        List.of(),
                        List.of(measure("thickest part of the tendon", 5 + spot.of("tendon.lumps"), "mm")),
                        ""));
    }
}
