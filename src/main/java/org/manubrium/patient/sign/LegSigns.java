package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.QuantitySign.atMost;
import static org.manubrium.patient.sign.QuantitySign.chosen;
import static org.manubrium.patient.sign.QuantitySign.measured;
import static org.manubrium.patient.sign.Spot.measure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Finding;
import org.manubrium.patient.vessel.LegFluid;

/** Swelling, veins, skin and tenderness of the legs. */
final class LegSigns {
    private static final List<String> UPWARDS = List.of("ankle", "shin", "thigh");

    private LegSigns() {}

    static Map<String, QuantitySign> all() {
        return Map.of(
                "pit", pit(),
                "level", level(),
                "girth", girth(),
                "calf", calf(),
                "veins", veins(),
                "skin", skin());
    }

    private static LegFluid fluid(Spot spot) {
        return new LegFluid(spot.body(), spot.side());
    }

    private static QuantitySign pit() {
        return measured(
                0.5,
                spot -> fluid(spot).pit(spot.place()),
                spot -> new Appearance("pit", List.of(filling("dent", spot, spot.place())), List.of(), ""),
                atMost("leg.pit-normal"));
    }

    /** The depth of the dent from the moment the thumb is lifted, for two minutes. */
    private static Appearance.Curve filling(String name, Spot spot, String place) {
        double deep = fluid(spot).pit(place);
        double seconds = Math.max(0.5, fluid(spot).refills(place));
        return LimbNumbers.curve(name, "mm", 1000, 121, t -> deep * Math.exp(-3 * t / seconds));
    }

    private static QuantitySign level() {
        return chosen(
                spot -> {
                    String highest = "none";
                    for (String place : UPWARDS) {
                        highest = fluid(spot).pit(place) > spot.constant("leg.pit-normal") ? place : highest;
                    }
                    return highest;
                },
                spot -> new Appearance(
                        "pits-upwards",
                        List.of(),
                        UPWARDS.stream()
                                .map(place -> measure(
                                        "dent at the " + place, fluid(spot).pit(place), "mm"))
                                .toList(),
                        ""));
    }

    private static QuantitySign girth() {
        return measured(
                0.1,
                spot -> fluid(spot).girth(),
                spot -> new Appearance(
                        "calf-tape",
                        List.of(),
                        List.of(measure(
                                "girth 10 cm below the knee", fluid(spot).girth(), "cm")),
                        ""),
                (spot, finding) -> ((Finding.Measured) finding).value()
                                - fluid(spot.on(spot.side().opposite())).girth()
                        < spot.constant("leg.girth-apart"));
    }

    private static QuantitySign calf() {
        return chosen(
                spot -> spot.of("leg.@side.calf-pain") >= spot.constant("leg.calf-pain-from") ? "tender" : "none",
                spot -> new Appearance(
                        "pressed",
                        List.of(),
                        List.of(measure("draws back", 60 * spot.of("leg.@side.calf-pain"), "mm")),
                        spot.body().physiology().saying("calf-pressed", spot.of("leg.@side.calf-pain"))));
    }

    private static QuantitySign veins() {
        return chosen(
                spot -> {
                    double from = spot.constant("vein.wide-from");
                    if (spot.of("vein.@side.long.wide") >= from) {
                        return spot.of("vein.@side.short.wide") >= from ? "both" : "inner-leg";
                    }
                    return spot.of("vein.@side.short.wide") >= from ? "back-of-calf" : "flat";
                },
                spot -> new Appearance(
                        "leg-veins",
                        List.of(),
                        List.of(
                                measure("vein up the inner leg, wide", 2 + spot.of("vein.@side.long.wide"), "mm"),
                                measure(
                                        "vein up the back of the calf, wide",
                                        2 + spot.of("vein.@side.short.wide"),
                                        "mm")),
                        ""));
    }

    private static final Map<String, String> SKIN = new LinkedHashMap<>();

    static {
        SKIN.put("inner-ulcer", "sore above the inner ankle");
        SKIN.put("toe-ulcer", "sore on a toe");
        SKIN.put("black", "black part of a toe");
        SKIN.put("inflamed", "red and shining");
        SKIN.put("plaque", "raised patch on the shin");
        SKIN.put("warty", "rough, thick skin");
        SKIN.put("stained", "brown above the ankle");
        SKIN.put("hairless", "hair lost");
    }

    /** The first of these that is plain, the most telling first. */
    private static QuantitySign skin() {
        return chosen(
                spot -> SKIN.keySet().stream()
                        .filter(kind -> spot.of("leg.@side." + kind) >= spot.constant("leg." + kind + "-from"))
                        .findFirst()
                        .orElse("own"),
                spot -> new Appearance(
                        "leg-skin",
                        List.of(),
                        SKIN.entrySet().stream()
                                .map(kind -> measure(
                                        kind.getValue(),
                                        spot.of("leg.@side." + kind.getKey())
                                                * spot.constant("leg." + kind.getKey() + "-shown"),
                                        SIZES.contains(kind.getKey()) ? "mm" : "%"))
                                .toList(),
                        ""));
    }

    private static final List<String> SIZES = List.of("inner-ulcer", "toe-ulcer", "black", "plaque");
}
