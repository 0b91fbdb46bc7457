package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.heart.Heart;
import org.manubrium.patient.heart.Jet;
import org.manubrium.patient.heart.Jets;
import org.manubrium.patient.heart.Load;
import org.manubrium.patient.heart.Murmurs;
import org.manubrium.patient.heart.Stethoscope;

/**
 * How the loudest murmur answers when the heart is given more or less to do: a breath in, a strain, squatting, standing up,
 * a hand grip, raised legs. What it reads is the act, by its name in the tables.
 */
final class MurmurResponseReader extends HeartReader {
    private static final double HALF_SECONDS = 3;

    MurmurResponseReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "murmur-response";
    }

    /** Who stands has squatted before, who squats has stood. */
    private static Load before(Body body, Manoeuvre manoeuvre) {
        return switch (manoeuvre.part()) {
            case "standing" -> Load.of(body.physiology(), "squatting");
            case "squatting" -> Load.of(body.physiology(), "standing");
            default -> Load.REST;
        };
    }

    private static Load during(Body body, Manoeuvre manoeuvre) {
        return Load.of(body.physiology(), manoeuvre.part());
    }

    /** Where the murmur is loudest at rest, and through which chest piece. */
    private static Murmurs rest(Body body, Manoeuvre manoeuvre, Probe probe) {
        Probe lying = new Probe(probe.item(), "lying-45", probe.technique());
        return MurmurReader.loudest(body, manoeuvre, lying);
    }

    private static Stethoscope under(Stethoscope stethoscope, Load load) {
        return new Stethoscope(
                stethoscope.heart().under(load),
                stethoscope.place(),
                stethoscope.piece(),
                stethoscope.position(),
                stethoscope.heldOut());
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        Murmurs rest = rest(body, manoeuvre, probe);
        if (rest.heard().isEmpty()) {
            return new Finding.Seen("none");
        }
        Jet loudest = rest.loudest();
        double change = amount(under(rest.stethoscope(), during(body, manoeuvre)), loudest)
                - amount(under(rest.stethoscope(), before(body, manoeuvre)), loudest);
        double told = rest.stethoscope().heart().number("response.told");
        return new Finding.Seen(change >= told ? "louder" : change <= -told ? "softer" : "unchanged");
    }

    /** How loud and how long the same jet is now, in one number of dB. */
    private static double amount(Stethoscope stethoscope, Jet loudest) {
        Jet now = Jets.of(stethoscope.heart()).stream()
                .filter(jet -> jet.kind() == loudest.kind())
                .findFirst()
                .orElseThrow();
        return stethoscope.hears(now) + 20 * Math.log10(now.length());
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "none";
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        Heart heart = resting(body);
        String place = choice(manoeuvre, probe, MurmurReader.AREA, "mitral");
        String piece = choice(manoeuvre, probe, PIECE, "diaphragm");
        boolean breathesIn = manoeuvre.part().equals("breath-in");
        Stethoscope before = new Stethoscope(heart.under(before(body, manoeuvre)), place, piece, "lying-45", true);
        Stethoscope during = under(before, breathesIn ? Load.REST : during(body, manoeuvre));
        HeartClip.Samples samples = new HeartClip(before, HALF_SECONDS, t -> 0)
                .untilABeatEnds()
                .samples()
                .then(new HeartClip(during, HALF_SECONDS, t -> breathesIn ? 1 : 0)
                        .fromAFirstSound()
                        .samples());
        return sound(
                before,
                HeartClip.breath(2 * HALF_SECONDS, t -> breathesIn && t >= HALF_SECONDS ? 1 : 0),
                samples,
                List.of(new Appearance.Measure("asked to " + act(manoeuvre) + " from", HALF_SECONDS, "s")));
    }

    private static String act(Manoeuvre manoeuvre) {
        return switch (manoeuvre.part()) {
            case "breath-in" -> "breathe in slowly";
            case "valsalva" -> "bear down";
            case "standing" -> "stand up";
            case "squatting" -> "squat";
            case "grip" -> "grip hard";
            case "leg-raise" -> "let both legs be lifted";
            default -> throw new IllegalArgumentException("no act is called \"" + manoeuvre.part() + "\"");
        };
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return rest(body, manoeuvre, probe)
                .heard()
                .map(jet -> jet.kind().quantities())
                .orElse(Set.of());
    }
}
