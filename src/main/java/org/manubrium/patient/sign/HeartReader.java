package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.heart.Heart;
import org.manubrium.patient.heart.Jet;
import org.manubrium.patient.heart.JetKind;
import org.manubrium.patient.heart.Load;
import org.manubrium.patient.heart.Murmurs;
import org.manubrium.patient.heart.Pressures;
import org.manubrium.patient.heart.Stethoscope;

/** What the signs of the heart share: a heart under the load of the position and the breath, and how it is heard. */
abstract class HeartReader implements SignReader {
    static final String PIECE = "piece";
    static final String BREATH = "breath";

    private static final double BREATHING_SECONDS = 4.8;
    private static final double BREATH_IN_SECONDS = 2;

    private final Examination examination;

    HeartReader(Examination examination) {
        this.examination = examination;
    }

    /** The code of the manoeuvre's scale that health shows. */
    abstract String usual(Manoeuvre manoeuvre);

    @Override
    public final List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return List.of();
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return code(manoeuvre, finding).equals(usual(manoeuvre));
    }

    final String code(Manoeuvre manoeuvre, Finding finding) {
        return finding instanceof Finding.Graded graded
                ? examination.scale(manoeuvre.scale()).grade(graded.amount()).code()
                : ((Finding.Seen) finding).code();
    }

    static Heart resting(Body body) {
        Circulation lying = Circulation.lying(body);
        Pressures arteries = new Pressures(lying.systolic(), lying.diastolic(), lying.rate());
        return new Heart(body, arteries, Load.REST);
    }

    /** The heart in the position of the probe. */
    static Heart heart(Body body, Probe probe) {
        String position = probe.position();
        boolean upright = position.equals("standing") || position.equals("squatting");
        return resting(body).under(upright ? Load.of(body.physiology(), position) : Load.REST);
    }

    /** The choice made of a variant, or the manoeuvre's first one; what is given if it has no such variant. */
    static String choice(Manoeuvre manoeuvre, Probe probe, String variant, String otherwise) {
        return manoeuvre.variants().stream()
                .filter(v -> v.id().contains(variant))
                .map(v -> probe.choice(v.id(), v.choices().get(0).id()))
                .findFirst()
                .orElse(otherwise);
    }

    /** How the breath goes: held out, held in, or quietly in and out. */
    static DoubleUnaryOperator breath(Manoeuvre manoeuvre, Probe probe) {
        return switch (choice(manoeuvre, probe, BREATH, "held-out")) {
            case "held-in" -> t -> 1;
            case "quiet" -> HeartReader::quiet;
            default -> t -> 0;
        };
    }

    private static double quiet(double seconds) {
        double t = seconds % BREATHING_SECONDS;
        double in = BREATH_IN_SECONDS;
        return t < in ? Math.pow(Math.sin(Math.PI / 2 * t / in), 2) : Math.max(0, 1 - 1.25 * (t - in) / in);
    }

    /** The stethoscope on the chest, the breath as it was asked for and held. */
    static Stethoscope stethoscope(Heart heart, String place, Manoeuvre manoeuvre, Probe probe) {
        boolean heldIn = choice(manoeuvre, probe, BREATH, "held-out").equals("held-in");
        Load breath = heldIn ? Load.of(heart.body().physiology(), "breath-in") : Load.REST;
        return laid(heart.under(heart.load().and(breath)), place, manoeuvre, probe);
    }

    /** The stethoscope on the chest, before a breath is drawn. */
    static Stethoscope laid(Heart heart, String place, Manoeuvre manoeuvre, Probe probe) {
        return new Stethoscope(
                heart,
                place,
                choice(manoeuvre, probe, PIECE, "diaphragm"),
                probe.position(),
                choice(manoeuvre, probe, BREATH, "held-out").equals("held-out"));
    }

    /** The sound through a stethoscope for one breath. */
    static Appearance sound(Stethoscope through, DoubleUnaryOperator breath) {
        return sound(through, breath, 0, List.of());
    }

    /** The sound through a stethoscope that touches so well that all is louder by so many dB. */
    static Appearance sound(
            Stethoscope through, DoubleUnaryOperator breath, double touches, List<Appearance.Measure> beside) {
        HeartClip clip = new HeartClip(through, BREATHING_SECONDS, breath);
        return sound(
                through,
                HeartClip.breath(BREATHING_SECONDS, breath),
                clip.samples().louder(touches),
                beside);
    }

    static Appearance sound(
            Stethoscope through, Appearance.Curve breath, HeartClip.Samples samples, List<Appearance.Measure> moments) {
        List<Appearance.Curve> curves = new ArrayList<>(List.of(breath));
        curves.addAll(samples.curves());
        Murmurs murmurs = Murmurs.through(through);
        Jet empties = loudest(murmurs, true);
        Jet fills = loudest(murmurs, false);
        Heart heart = through.heart();
        List<Appearance.Measure> measures = List.of(
                hertz("thumps, pitch", heart.number("sound.first.hertz")),
                hertz("low thuds, pitch", heart.number("sound.third-left.hertz")),
                hertz("snaps, pitch", heart.number("sound.opening-snap.hertz")),
                hertz("noise while the heart empties, from", empties.low(heart)),
                hertz("noise while the heart empties, up to", empties.high(heart)),
                hertz("noise while it fills, from", fills.low(heart)),
                hertz("noise while it fills, up to", fills.high(heart)),
                new Appearance.Measure(
                        "faintest that is heard, against a healthy first sound at the apex",
                        heart.number("audible"),
                        "dB"));
        return new Appearance(
                "heart-sound",
                List.copyOf(curves),
                Stream.concat(measures.stream(), moments.stream()).toList(),
                "");
    }

    private static Jet loudest(Murmurs murmurs, boolean systolic) {
        List<Jet> some = murmurs.jets().stream()
                .filter(jet -> jet.kind().timing() == JetKind.Timing.CONTINUOUS
                        || jet.kind().timing().systolic() == systolic)
                .toList();
        return Murmurs.through(murmurs.stethoscope(), some).loudest();
    }

    private static Appearance.Measure hertz(String label, double amount) {
        return new Appearance.Measure(label, Math.rint(amount), "Hz");
    }

    static double tenth(double amount) {
        return Math.rint(amount * 10) / 10 + 0.0;
    }
}
