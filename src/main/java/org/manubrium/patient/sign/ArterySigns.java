package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.QuantitySign.between;
import static org.manubrium.patient.sign.QuantitySign.chosen;
import static org.manubrium.patient.sign.QuantitySign.graded;
import static org.manubrium.patient.sign.QuantitySign.measured;
import static org.manubrium.patient.sign.Spot.measure;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.heart.ArterialPulse;
import org.manubrium.patient.vessel.Arteries;
import org.manubrium.patient.vessel.Artery;
import org.manubrium.patient.vessel.SkinFlow;

/** The arteries: what is felt at each place, when it comes, what a cuff reads there, and what the skin makes of it. */
final class ArterySigns {
    private static final double FELT_MS = 40;
    private static final int FELT_SAMPLES = 150;
    private static final double TIMED_MS = 10;
    private static final int TIMED_SAMPLES = 300;

    private ArterySigns() {}

    static Map<String, QuantitySign> all() {
        return Map.of(
                "pulse", pulse(),
                "wrists", wrists(),
                "arm-pressure", armPressure(),
                "ankle-pressure", anklePressure(),
                "ankle-index", ankleIndex(),
                "raised-leg", raisedLeg(),
                "bruit", bruit(),
                "warmth-foot", graded("skin-warmth", spot -> foot(spot).warmth(), HandSigns::warmthShown),
                "refill-foot",
                        measured(
                                0.1,
                                spot -> foot(spot).refill(),
                                HandSigns::refillShown,
                                QuantitySign.atMost("flow.refill-normal")));
    }

    private static SkinFlow foot(Spot spot) {
        return SkinFlow.foot(spot.body(), spot.side());
    }

    private static Arteries arteries(Spot spot) {
        return new Arteries(spot.body(), spot.side());
    }

    private static Beats beats(Body body, double seconds) {
        return Beats.of(body, Circulation.lying(body).rate(), seconds);
    }

    private static QuantitySign pulse() {
        return graded(
                "pulse-strength",
                spot -> arteries(spot).kept(Artery.at(spot.place())) * sent(spot),
                spot -> new Appearance("pulse-felt", List.of(felt(spot)), List.of(), ""));
    }

    private static Appearance.Curve felt(Spot spot) {
        double kept = arteries(spot).kept(Artery.at(spot.place())) * sent(spot);
        Beats beats = beats(spot.body(), FELT_SAMPLES * FELT_MS / 1000);
        double height = spot.constant("artery.lifts.@place");
        return curve("lifts the finger", "mm", FELT_MS, FELT_SAMPLES, t -> height * kept * beats.pulse(t));
    }

    /**
     * How strong the pulse is that the heart sends into every artery alike: 1 as long as its volume is one of health, less
     * when the stroke is small, more when it is large and runs off.
     */
    private static double sent(Spot spot) {
        double volume = Math.rint(new ArterialPulse(HeartReader.resting(spot.body())).volume() * 100) / 100;
        double low = spot.constant("artery.volume-low");
        double high = spot.constant("artery.volume-high");
        if (volume < low) {
            return Math.max(spot.constant("artery.weakest"), spot.constant("artery.weak") * volume / low);
        }
        return volume < high
                ? 1
                : Math.min(spot.constant("artery.strongest"), spot.constant("artery.strong") * volume / high);
    }

    /** As a curve of tenths would hide a weak pulse, these have hundredths. */
    private static Appearance.Curve curve(
            String name, String unit, double stepMs, int samples, DoubleUnaryOperator at) {
        Appearance.Curve tenfold = LimbNumbers.curve(name, unit, stepMs, samples, t -> 10 * at.applyAsDouble(t));
        return new Appearance.Curve(
                name,
                unit,
                stepMs,
                tenfold.samples().stream().map(sample -> sample / 10).toList());
    }

    private static QuantitySign wrists() {
        return chosen(
                spot -> {
                    double apart =
                            late(spot.body(), Side.RIGHT, Artery.RADIAL) - late(spot.body(), Side.LEFT, Artery.RADIAL);
                    double noticed = spot.constant("artery.delay-noticed");
                    return apart >= noticed ? "right-later" : -apart >= noticed ? "left-later" : "together";
                },
                spot -> new Appearance(
                        "two-pulses",
                        List.of(
                                timed(spot.body(), "right wrist", Side.RIGHT, Artery.RADIAL),
                                timed(spot.body(), "left wrist", Side.LEFT, Artery.RADIAL)),
                        List.of(),
                        ""));
    }

    private static double late(Body body, Side side, Artery artery) {
        return new Arteries(body, side).late(artery);
    }

    private static Appearance.Curve timed(Body body, String name, Side side, Artery artery) {
        Arteries arteries = new Arteries(body, side);
        Beats beats = beats(body, TIMED_SAMPLES * TIMED_MS / 1000);
        double late = arteries.late(artery) / 1000;
        return curve(name, "mm", TIMED_MS, TIMED_SAMPLES, t -> 2 * arteries.kept(artery) * beats.pulse(t - late));
    }

    /** The pressure in the arm of one side. */
    private static Circulation arm(Body body, Side side) {
        Circulation heart = Circulation.lying(body);
        double kept = new Arteries(body, side).kept(Artery.BRACHIAL);
        return new Circulation(heart.systolic() * kept, heart.diastolic() * Math.sqrt(kept), heart.rate());
    }

    private static double read(Circulation arm, String place) {
        return Math.rint(place.equals("systolic") ? arm.systolic() : arm.diastolic());
    }

    private static QuantitySign armPressure() {
        return measured(
                1,
                spot -> read(arm(spot.body(), spot.side()), spot.place()),
                spot -> new Appearance(
                        "cuff", new CuffTrace(spot.body(), arm(spot.body(), spot.side())).curves(), List.of(), ""),
                ArterySigns::likeTheOther);
    }

    /** Within the limits of one arm, and not much below the other. */
    private static boolean likeTheOther(Spot spot, Finding finding) {
        double here = ((Finding.Measured) finding).value();
        double there = read(arm(spot.body(), spot.side().opposite()), spot.place());
        return between("pressure.@place.low", "pressure.@place.highest").normal(spot, finding)
                && there - here <= spot.constant("artery.arms-apart");
    }

    private static double higherArm(Body body) {
        return Math.max(arm(body, Side.RIGHT).systolic(), arm(body, Side.LEFT).systolic());
    }

    private static double ankle(Spot spot, String place) {
        return Math.rint(arteries(spot)
                .cuffed(Artery.at(place), Circulation.lying(spot.body()).systolic()));
    }

    private static QuantitySign anklePressure() {
        return measured(
                1,
                spot -> ankle(spot, spot.place()),
                spot -> {
                    double systolic = ankle(spot, spot.place());
                    Circulation there = new Circulation(
                            systolic, 0, Circulation.lying(spot.body()).rate());
                    List<Appearance.Curve> curves = new CuffTrace(spot.body(), there).curves();
                    return new Appearance("ankle-cuff", curves.subList(0, 2), List.of(), "");
                },
                (spot, finding) -> usual(spot, ((Finding.Measured) finding).value()));
    }

    private static boolean usual(Spot spot, double ankle) {
        double index = Math.rint(100 * ankle / higherArm(spot.body())) / 100;
        return index > spot.constant("artery.index-low") && index <= spot.constant("artery.index-stiff");
    }

    private static double higherAnkle(Spot spot) {
        return Math.max(ankle(spot, "posterior-tibial"), ankle(spot, "dorsalis-pedis"));
    }

    /** The four pressures are given; the ratio is for the student to work out. */
    private static QuantitySign ankleIndex() {
        return measured(
                0.01,
                spot -> higherAnkle(spot) / Math.rint(higherArm(spot.body())),
                spot -> new Appearance(
                        "four-pressures",
                        List.of(),
                        List.of(
                                measure(
                                        "right arm",
                                        Math.rint(arm(spot.body(), Side.RIGHT).systolic()),
                                        "mmHg"),
                                measure(
                                        "left arm",
                                        Math.rint(arm(spot.body(), Side.LEFT).systolic()),
                                        "mmHg"),
                                measure("behind the inner ankle", ankle(spot, "posterior-tibial"), "mmHg"),
                                measure("top of the foot", ankle(spot, "dorsalis-pedis"), "mmHg")),
                        ""),
                (spot, finding) -> usual(spot, higherAnkle(spot)));
    }

    /** The leg is raised five degrees a second; the sole keeps its colour as high as the pressure lifts the blood. */
    private static QuantitySign raisedLeg() {
        return measured(
                5,
                ArterySigns::pales,
                spot -> new Appearance(
                        "raised-leg",
                        List.of(
                                LimbNumbers.curve("leg raised", "degrees", 500, 61, ArterySigns::raised),
                                LimbNumbers.curve("colour of the sole", "%", 500, 61, t -> sole(spot, t))),
                        List.of(),
                        ""),
                QuantitySign.atLeast("artery.angle-least"));
    }

    private static double raised(double seconds) {
        return Math.min(90, 5 * seconds);
    }

    private static double sole(Spot spot, double seconds) {
        double over = raised(seconds) - pales(spot);
        return over <= 0 ? 100 : Math.max(12, 100 - 18 * over);
    }

    private static double pales(Spot spot) {
        Arteries arteries = arteries(spot);
        double kept = Math.max(arteries.kept(Artery.POSTERIOR_TIBIAL), arteries.kept(Artery.ANTERIOR_TIBIAL));
        double pressure = kept * Circulation.lying(spot.body()).systolic() - spot.constant("artery.angle-margin");
        double share = Math.max(0, pressure * spot.constant("artery.cm-per-mmhg") / spot.constant("artery.leg-length"));
        return share >= 1 ? 90 : Math.toDegrees(Math.asin(share));
    }

    private static QuantitySign bruit() {
        return chosen(spot -> noise(spot) > 0 ? "rushes" : "quiet", spot -> {
            Beats beats = beats(spot.body(), FELT_SAMPLES * FELT_MS / 1000);
            return new Appearance(
                    "artery-sound",
                    List.of(LimbNumbers.curve(
                            "loudness", "%", FELT_MS, FELT_SAMPLES, t -> 100 * noise(spot) * beats.pulse(t))),
                    List.of(),
                    "");
        });
    }

    private static double noise(Spot spot) {
        double narrow = arteries(spot).noisy(Artery.FEMORAL);
        return narrow < spot.constant("artery.noise-from") ? 0 : Math.min(1, 0.3 + narrow);
    }
}
