package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.QuantitySign.atLeast;
import static org.manubrium.patient.sign.QuantitySign.between;
import static org.manubrium.patient.sign.QuantitySign.chosen;
import static org.manubrium.patient.sign.QuantitySign.measured;
import static org.manubrium.patient.sign.Spot.measure;

import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;
import org.manubrium.patient.Build;
import org.manubrium.patient.Finding;
import org.manubrium.patient.joint.Joint;
import org.manubrium.patient.lung.Lungs;
import org.manubrium.patient.vessel.Arteries;
import org.manubrium.patient.vessel.Artery;

/** What is seen, measured and asked before the hands are laid on. */
final class ApproachSigns {
    private static final int READING_SECONDS = 60;

    private ApproachSigns() {}

    static Map<String, QuantitySign> all() {
        return Map.of(
                "temperature", temperature(),
                "saturation", saturation(),
                "comfort", comfort(),
                "build", build(),
                "flesh", flesh(),
                "hearing", hearing(),
                "walking", walking());
    }

    private static QuantitySign temperature() {
        return measured(
                0.1,
                spot -> spot.of("core-temperature"),
                spot -> new Appearance("thermometer", List.of(warming(spot)), List.of(), ""),
                between("temperature.least", "temperature.most"));
    }

    /** The thermometer comes up to the warmth of the mouth within the minute. */
    private static Appearance.Curve warming(Spot spot) {
        double mouth = spot.of("core-temperature");
        double room = spot.constant("flow.room");
        return LimbNumbers.curve(
                "thermometer", "°C", 1000, READING_SECONDS + 1, t -> mouth - (mouth - room) * Math.exp(-t / 7));
    }

    private static QuantitySign saturation() {
        return measured(
                1,
                spot -> spot.of("blood.saturation"),
                spot -> new Appearance(
                        "oximeter",
                        List.of(),
                        List.of(measure("reading on the finger", Math.rint(spot.of("blood.saturation")), "%")),
                        ""),
                atLeast("saturation.least"));
    }

    private static QuantitySign comfort() {
        return chosen(
                ApproachSigns::bearing,
                spot -> new Appearance(
                        "general-look",
                        List.of(),
                        List.of(
                                measure("eyes closed", 100 * clouded(spot), "% of the time"),
                                measure(
                                        "says in one breath",
                                        Math.rint(14 - 12 * Math.min(1, laboured(spot))),
                                        "words"),
                                measure(
                                        "shifts or guards",
                                        Math.rint(10 * Joint.worstPain(spot.body())),
                                        "times a minute")),
                        ""));
    }

    private static String bearing(Spot spot) {
        if (clouded(spot) >= spot.constant("comfort.clouded")) {
            return "drowsy";
        }
        if (laboured(spot) >= spot.constant("comfort.laboured")) {
            return "breathless";
        }
        return Joint.worstPain(spot.body()) >= spot.constant("comfort.pain") ? "in-pain" : "at-ease";
    }

    private static double clouded(Spot spot) {
        return Math.min(0.9, HandSigns.poisoned(spot));
    }

    private static double laboured(Spot spot) {
        return new Lungs(spot.body()).effort();
    }

    /** Height and weight are given; the index is for the student to work out. */
    private static QuantitySign build() {
        return measured(
                0.1,
                spot -> spot.of("body.mass-index"),
                spot -> {
                    double metres =
                            spot.constant("body.height") + spot.constant("body.height-spread") * spot.own("height");
                    double kilograms = Math.rint(spot.of("body.mass-index") * metres * metres * 10) / 10;
                    return new Appearance(
                            "weighing",
                            List.of(),
                            List.of(
                                    measure("height", Math.rint(metres * 1000) / 10, "cm"),
                                    measure("weight", kilograms, "kg")),
                            "");
                },
                (spot, finding) ->
                        between("body.index-least", "body.index-most").normal(spot, finding)
                                || asOfBuild(spot, ((Finding.Measured) finding).value()));
    }

    /** As a healthy person of this build may weigh. */
    private static boolean asOfBuild(Spot spot, double index) {
        double own = Math.rint(spot.body().healthy().quantity("body.mass-index") * 10) / 10;
        double more = index - own;
        return spot.body().person().build() == Build.HEAVY
                && more >= -spot.constant("body.index-sway")
                && more <= spot.constant("body.index-sway");
    }

    private static QuantitySign flesh() {
        return chosen(
                spot -> spot.of("body.wasting") >= spot.constant("body.wasting-seen") ? "hollow" : "filled",
                spot -> new Appearance(
                        "temples",
                        List.of(),
                        List.of(
                                measure("hollow of the temple", 1 + 11 * spot.of("body.wasting"), "mm"),
                                measure("girth of the upper arm", 29 - 9 * spot.of("body.wasting"), "cm")),
                        ""));
    }

    /** A patient who is hard of hearing mostly knows it: the answer comes from the ears. */
    private static QuantitySign hearing() {
        return chosen(ApproachSigns::heard, spot -> {
                    List<String> words = List.of("both-well", "right-worse", "left-worse", "both-poor");
                    String said = spot.body().physiology().saying("ask-hearing", words.indexOf(heard(spot)));
                    return new Appearance("answer", List.of(), List.of(), said);
                })
                .with(spot -> ears(spot.body()));
    }

    private static String heard(Spot spot) {
        boolean right = hard(spot, Side.RIGHT);
        boolean left = hard(spot, Side.LEFT);
        return right ? left ? "both-poor" : "right-worse" : left ? "left-worse" : "both-well";
    }

    private static boolean hard(Spot spot, Side ear) {
        double lost = Hearing.of(spot.body(), ear).air()
                - Hearing.of(spot.healthy().body(), ear).air();
        return lost >= spot.constant("hearing.noticed");
    }

    private static List<Strand> ears(Body body) {
        return List.of(
                new Strand("sound-conduction", Hearing.conduction(body, Side.RIGHT)),
                new Strand("sound-sensing", Hearing.sensing(body, Side.RIGHT)),
                new Strand("sound-conduction", Hearing.conduction(body, Side.LEFT)),
                new Strand("sound-sensing", Hearing.sensing(body, Side.LEFT)));
    }

    private static QuantitySign walking() {
        return chosen(ApproachSigns::walks, spot -> {
            List<String> words = List.of("freely", "stops-far", "stops-soon", "rest-pain");
            String said = spot.body().physiology().saying("ask-walking", words.indexOf(walks(spot)));
            return new Appearance("answer", List.of(), List.of(), said);
        });
    }

    private static String walks(Spot spot) {
        double worst = Math.min(calf(spot.body(), Side.RIGHT), calf(spot.body(), Side.LEFT));
        if (worst < spot.constant("walking.rest-pain")) {
            return "rest-pain";
        }
        if (worst < spot.constant("walking.soon")) {
            return "stops-soon";
        }
        return worst < spot.constant("walking.far") ? "stops-far" : "freely";
    }

    private static double calf(Body body, Side side) {
        Arteries arteries = new Arteries(body, side);
        return Math.max(arteries.kept(Artery.POSTERIOR_TIBIAL), arteries.kept(Artery.ANTERIOR_TIBIAL));
    }
}
