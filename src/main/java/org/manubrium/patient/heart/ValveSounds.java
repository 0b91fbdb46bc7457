package org.manubrium.patient.heart;

import java.util.Set;
import org.manubrium.patient.heart.Causes.Cause;

/**
 * The first and the second sound. Levels in dB against the healthy sound of the same valve, times in milliseconds. The heart
 * is taken at the load of the moment, so that a breath in moves the pulmonary part.
 */
public record ValveSounds(Heart heart) {
    public static final Set<String> SPLIT = Set.of(
            "left-bundle-delay",
            "right-bundle-delay",
            "pulmonary-valve-area",
            "atrial-shunt",
            "aortic-valve-area",
            "aortic-valve-mobility",
            "outflow-obstruction",
            "mitral-leak");

    private double number(String name) {
        return heart.number(name);
    }

    private double of(String quantity) {
        return heart.of(quantity);
    }

    /** How much louder than in health the first sound is when the atria lead by so many milliseconds. */
    public double first(double lead) {
        return firstCauses(lead).sum();
    }

    /** What makes the first sound loud or soft; what makes it change from beat to beat. */
    public Set<String> firstQuantities() {
        return varies()
                ? Set.of("atrioventricular-dissociation", "atrial-contraction")
                : firstCauses(of("pr-interval")).main();
    }

    private Causes firstCauses(double lead) {
        double early = number("s1.by-lead") * (number("s1.usual-lead") - lead);
        double atria = Math.max(number("s1.late-lead"), Math.min(number("s1.early-lead"), early));
        double narrow = Heart.rise(number("s1.narrow-from") - of("mitral-valve-area"), 0, number("s1.narrow-span"));
        double weak = 1 - heart.strength();
        double vigour = Math.max(0, heart.demand() - 1);
        return Causes.of(
                Cause.of(atria, "pr-interval", "atrioventricular-dissociation"),
                Cause.of(number("s1.narrow") * narrow * of("mitral-pliability"), "mitral-valve-area"),
                Cause.of(number("s1.weak") * Heart.rise(weak, 0, number("s1.weak-span")), "left-ventricle-contraction"),
                Cause.of(number("s1.leak") * Heart.rise(of("mitral-leak"), 0, number("s1.leak-span")), "mitral-leak"),
                Cause.of(number("s1.vigour") * Math.min(1, vigour), "output-demand", "thyroid-state"),
                Cause.of(
                        number("s1.bundle") * Heart.rise(of("left-bundle-delay"), 0, number("s1.bundle-span")),
                        "left-bundle-delay"),
                Cause.of(number("s1.metal") * of("mechanical-mitral-valve"), "mechanical-mitral-valve"),
                covered());
    }

    private Cause covered() {
        return Cause.of(
                heart.cover(), "pericardial-fluid", "lung.right.lower-front.trapped", "lung.left.lower-front.trapped");
    }

    /** How much louder than in health the first sound is. */
    public double first() {
        return first(of("pr-interval"));
    }

    /** Whether it changes from beat to beat: the atria lead it by a time of chance, or not at all. */
    public boolean varies() {
        return of("atrioventricular-dissociation") >= number("s1.apart")
                || of("atrial-contraction") < number("s1.idle");
    }

    /** How much louder than in health the aortic valve closes. */
    public double aortic() {
        return aorticCauses().sum();
    }

    public Causes aorticCauses() {
        double high = Heart.rise(heart.systolic(), number("a2.high-from"), number("a2.high-to"));
        double leak = Heart.rise(of("aortic-leak"), number("a2.leak-from"), number("a2.leak-to"));
        return Causes.of(
                Cause.of(number("a2.high") * high, "systolic-lying"),
                Cause.of(number("a2.stiff") * (1 - of("aortic-valve-mobility")), "aortic-valve-mobility"),
                Cause.of(number("a2.leak") * leak, "aortic-leak"),
                Cause.of(number("a2.metal") * of("mechanical-aortic-valve"), "mechanical-aortic-valve"),
                covered());
    }

    /** How much louder than in health the pulmonary valve closes. */
    public double pulmonary() {
        return pulmonaryCauses().sum();
    }

    public Causes pulmonaryCauses() {
        double high = Heart.rise(of("pulmonary-pressure"), number("p2.high-from"), number("p2.high-to"));
        double narrow = Heart.rise(heart.pulmonaryGradient(), number("p2.narrow-from"), number("p2.narrow-to"));
        return Causes.of(
                Cause.of(number("p2.high") * high, "pulmonary-pressure"),
                Cause.of(number("p2.narrow") * narrow, "pulmonary-valve-area"),
                covered());
    }

    /** From the first sound to the closing of the aortic valve. */
    public double aorticAt() {
        double slow = Heart.rise(heart.aorticGradient(), number("split.slow-from"), number("split.slow-to"));
        double below = Heart.rise(heart.outflowGradient(), number("split.slow-from"), number("split.slow-to"));
        return heart.systole()
                + of("left-bundle-delay")
                + number("split.aortic-slow") * Math.max(slow, below)
                - number("split.mitral-early") * of("mitral-leak");
    }

    /** From the first sound to the closing of the pulmonary valve: a breath in brings the right side more to send on. */
    public double pulmonaryAt() {
        double slow = Heart.rise(heart.pulmonaryGradient(), number("split.slow-from"), number("split.slow-to"));
        double shunt = Math.min(1, of("atrial-shunt"));
        double more = (heart.load().right() - 1) * (1 - shunt) / number("split.breath-load");
        return heart.systole()
                + number("split")
                + number("split.breath") * more
                + of("right-bundle-delay")
                + number("split.pulmonary-slow") * slow
                + number("split.shunt") * shunt;
    }

    /** From the aortic to the pulmonary part of the second sound; negative if the pulmonary comes first. */
    public double split() {
        return pulmonaryAt() - aorticAt();
    }
}
