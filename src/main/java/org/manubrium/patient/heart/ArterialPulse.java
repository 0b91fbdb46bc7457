package org.manubrium.patient.heart;

import java.util.Set;

/** The pulse in a large artery: how fast it rises, how high, how it falls. Milliseconds, millimetres of movement, mmHg. */
public record ArterialPulse(Heart heart) {
    public static final Set<String> PARADOX = Set.of(
            "pericardial-fluid",
            "pericardial-restraint",
            "lung.right.lower-front.narrow",
            "lung.left.lower-front.narrow");

    private double number(String name) {
        return heart.number("pulse." + name);
    }

    private double of(String quantity) {
        return heart.of(quantity);
    }

    public double told() {
        return number("delay-told");
    }

    /** How much a narrow outlet slows the rise, 0..1; stiff old arteries hide a part of it. */
    private double slowed() {
        double narrow = Heart.rise(heart.aorticGradient(), number("slow-from"), number("slow-to"));
        double stiff = Heart.rise(heart.body().person().age(), number("stiff-from"), number("stiff-to"));
        return narrow * (1 - number("stiff-hides") * stiff);
    }

    /** How freely blood runs off as the ventricle fills, 0..1. */
    private double runsOff() {
        double leak = Heart.rise(of("aortic-leak"), number("leak-from"), number("leak-to"));
        return Math.max(leak, Heart.rise(of("arterial-duct"), 0, number("duct")));
    }

    private double jerks() {
        return Heart.rise(of("outflow-obstruction"), 0, number("jerks"));
    }

    public String character() {
        if (jerks() >= 1) {
            return "jerky";
        }
        double plain = number("plain");
        boolean slow = slowed() >= plain;
        boolean collapses = runsOff() >= plain;
        return slow ? (collapses ? "double" : "slow-rising") : collapses ? "collapsing" : "normal";
    }

    public Set<String> quantities() {
        return switch (character()) {
            case "jerky" -> Set.of("outflow-obstruction");
            case "slow-rising" -> Set.of("aortic-valve-area");
            case "double" -> Set.of("aortic-valve-area", "aortic-leak");
            case "collapsing" -> Set.of("aortic-leak", "arterial-duct");
            default -> Set.of();
        };
    }

    /** How large the pulse is, 1 in health: the pressure that it adds, which an idle or pressed heart cannot. */
    public double volume() {
        double pulse = heart.arteries().systolic() - heart.arteries().diastolic();
        double forward = Math.sqrt(heart.stroke() / heart.number("stroke"));
        return pulse / number("pressure") * forward;
    }

    /** What makes it large or small: what lies in the heart before what lies in the arteries. */
    public Set<String> volumeQuantities() {
        if (volume() > 1) {
            return runsOff() > 0
                    ? Set.of("aortic-leak", "arterial-duct")
                    : Set.of("output-demand", "thyroid-state", "systolic-lying", "diastolic-lying");
        }
        if (slowed() > 0) {
            return Set.of("aortic-valve-area");
        }
        return of("pericardial-fluid") > 0
                ? Set.of("pericardial-fluid")
                : Set.of("left-ventricle-contraction", "systolic-lying", "diastolic-lying", "blood-loss");
    }

    /** In a weak ventricle that its atria lead every second beat is smaller. */
    public boolean alternates() {
        return heart.strength() < number("alternates") && heart.atrialKick() >= number("led");
    }

    /** The share of its usual size that the beat of that number has. */
    public double beat(int number) {
        return alternates() && number % 2 == 1 ? number("smaller") : 1;
    }

    /** By how much the systolic pressure falls on breathing in. */
    public double fallOnBreathIn() {
        double narrow = (of("lung.right.lower-front.narrow") + of("lung.left.lower-front.narrow")) / 2;
        double own = heart.body().person().variation().of("pulse-paradox") * number("fall-spread");
        double pressed = Math.max(
                number("fall-fluid") * of("pericardial-fluid"), number("fall-restraint") * of("pericardial-restraint"));
        return number("fall") + own + Math.max(pressed, number("fall-narrow") * narrow);
    }

    /** How much later the pulse comes in the groin than at the wrist. */
    public double femoralDelay() {
        return number("delay") * of("aortic-coarctation");
    }

    /** How the artery moves with one beat. */
    public Wave wave() {
        return new Wave(
                number("rise") + number("slower") * slowed(),
                number("fall-ms") * (1 - number("quicker") * runsOff()),
                Math.min(number("largest"), volume()),
                jerks() * 0.6,
                number("second-at"));
    }

    /**
     * One beat of an artery.
     *
     * @param rise from its upstroke to its top, ms; {@code fall} the time in which it falls to a third
     * @param size how far the wall moves, mm
     * @param second how high a second push stands beside the first, 0..1, and {@code secondAt} when, ms
     */
    public record Wave(double rise, double fall, double size, double second, double secondAt) {
        private static final double LONGEST = 1400;
        private static final double SECOND_WIDTH = 40;

        /** The movement of the wall so many milliseconds after the upstroke began, mm. */
        public double height(double ms) {
            if (ms <= 0 || ms > LONGEST) {
                return 0;
            }
            double first = ms < rise ? ms / rise : Math.exp(-(ms - rise) / fall);
            double again = second * Math.exp(-Math.pow((ms - secondAt) / SECOND_WIDTH, 2));
            return size * Math.max(first, again);
        }
    }
}
