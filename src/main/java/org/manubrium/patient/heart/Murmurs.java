package org.manubrium.patient.heart;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.manubrium.patient.heart.JetKind.Timing;

/** What is heard of the jets through one stethoscope; each jet's loudness is worked out once. */
public record Murmurs(Stethoscope stethoscope, List<Heard> all) {

    /** A jet and how loud it is here, dB. */
    public record Heard(Jet jet, double level) {}

    public static Murmurs through(Stethoscope stethoscope) {
        return stethoscope
                .heart()
                .body()
                .once(stethoscope, Murmurs.class, () -> through(stethoscope, Jets.of(stethoscope.heart())));
    }

    /** @param jets those of the stethoscope's heart that are listened for */
    public static Murmurs through(Stethoscope stethoscope, List<Jet> jets) {
        return new Murmurs(
                stethoscope,
                jets.stream().map(jet -> new Heard(jet, stethoscope.hears(jet))).toList());
    }

    public List<Jet> jets() {
        return all.stream().map(Heard::jet).toList();
    }

    private Heart heart() {
        return stethoscope.heart();
    }

    private Heard first() {
        return all.stream().max(Comparator.comparingDouble(Heard::level)).orElseThrow();
    }

    /** The loudest jet, heard or not. */
    public Jet loudest() {
        return first().jet();
    }

    /** The loudest jet of those that are heard. */
    public Optional<Jet> heard() {
        Heard first = first();
        return stethoscope.audible(first.level()) ? Optional.of(first.jet()) : Optional.empty();
    }

    /** How loud the loudest is, dB. */
    public double level() {
        return first().level();
    }

    /** When it is heard; both where one in systole and one in diastole are nearly as loud. */
    public String timing() {
        return heard().map(this::timing).orElse("none");
    }

    private String timing(Jet jet) {
        double beside = level() - heart().number("murmur.beside");
        boolean both = all.stream()
                .filter(other -> other.level() >= beside && stethoscope.audible(other.level()))
                .map(other -> other.jet().kind().timing())
                .filter(other -> other != Timing.CONTINUOUS)
                .anyMatch(other -> other.systolic() != jet.kind().timing().systolic());
        if (both && jet.kind().timing() != Timing.CONTINUOUS) {
            return "both";
        }
        return switch (jet.kind().timing()) {
            case EJECTION -> "ejection";
            case LEAK -> jet.from() >= heart().number("murmur.late") ? "late-systolic" : "pansystolic";
            case AFTER_SECOND -> "early-diastolic";
            case FILLING -> "mid-diastolic";
            case CONTINUOUS -> "continuous";
        };
    }

    /** How its loudness goes with time. */
    public String shape() {
        return heard().map(this::shape).orElse("none");
    }

    private String shape(Jet jet) {
        return switch (jet.kind().timing()) {
            case EJECTION -> jet.peak() < heart().number("murmur.late-peak") ? "early-peak" : "late-peak";
            case LEAK -> jet.from() > heart().number("murmur.late") ? "grows" : "even";
            case AFTER_SECOND -> "fades";
            case FILLING -> heart().atrialKick() >= heart().number("murmur.kick") ? "fades-and-grows" : "fades";
            case CONTINUOUS -> "swells";
        };
    }

    /** Whether it is low, medium or high. */
    public String pitch() {
        return heard().map(this::pitch).orElse("none");
    }

    private String pitch(Jet jet) {
        double middle = Math.sqrt(jet.low(heart()) * jet.high(heart()));
        return middle < heart().number("murmur.low")
                ? "low"
                : middle < heart().number("murmur.high") ? "medium" : "high";
    }
}
