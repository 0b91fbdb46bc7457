package org.manubrium.patient.heart;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.manubrium.patient.heart.JetKind.Timing;

/** What is heard of the jets through one stethoscope. */
public record Murmurs(Stethoscope stethoscope, List<Jet> jets) {

    public static Murmurs through(Stethoscope stethoscope) {
        return new Murmurs(stethoscope, new Jets(stethoscope.heart()).all());
    }

    private Heart heart() {
        return stethoscope.heart();
    }

    public double level(Jet jet) {
        return stethoscope.hears(jet);
    }

    /** The loudest jet, heard or not. */
    public Jet loudest() {
        return jets.stream().max(Comparator.comparingDouble(this::level)).orElseThrow();
    }

    /** The loudest jet of those that are heard. */
    public Optional<Jet> heard() {
        return Optional.of(loudest()).filter(jet -> stethoscope.audible(level(jet)));
    }

    /** How loud the loudest is, dB. */
    public double level() {
        return level(loudest());
    }

    /** When it is heard; both where one in systole and one in diastole are nearly as loud. */
    public String timing() {
        return heard().map(this::timing).orElse("none");
    }

    private String timing(Jet jet) {
        boolean both = jets.stream()
                .filter(other -> stethoscope.audible(level(other)))
                .filter(other -> other.kind().timing() != Timing.CONTINUOUS)
                .filter(other ->
                        other.kind().timing().systolic() != jet.kind().timing().systolic())
                .anyMatch(other -> level(other) >= level(jet) - heart().number("murmur.beside"));
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
