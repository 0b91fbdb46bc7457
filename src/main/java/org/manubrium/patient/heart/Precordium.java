package org.manubrium.patient.heart;

import java.util.Set;

/** What the heart does to the chest wall: its place in centimetres, its lift in millimetres over one beat. */
public record Precordium(Heart heart, String position) {
    private double number(String name) {
        return heart.number("apex." + name);
    }

    private double of(String quantity) {
        return heart.of(quantity);
    }

    /** How far the apex lies outside the line down from the middle of the collar bone, cm; negative inside. */
    public double outwards() {
        double own = heart.body().person().variation().of("apex-place");
        return number("outwards") + number("spread") * own + number("by-size") * of("left-ventricle-dilatation");
    }

    /** The rib space in which it is felt. */
    public double space() {
        return of("left-ventricle-dilatation") >= number("lower-from") ? 6 : 5;
    }

    /** How wide it is, cm. */
    public double width() {
        return number("width") + number("wider") * of("left-ventricle-dilatation");
    }

    /** Many a healthy apex is not felt lying on the back; turned to the left it comes to the chest wall. */
    public boolean felt() {
        double own = heart.body().person().variation().of("apex-felt");
        double strong = Math.max(Math.max(sustained(), volume()), Math.max(tap(), of("left-ventricle-dilatation")));
        double near = own + strong + (position.equals("left-side") ? number("nearer") : 0);
        return near + heart.cover() * number("per-cover") + heart.wall() * number("per-wall") >= number("felt");
    }

    public String place() {
        return !felt() ? "not-felt" : outwards() >= number("outside") ? "outside" : "inside";
    }

    /** How long it stays up: a thick ventricle, and one that works against pressure, lets go late. */
    private double sustained() {
        double against = Heart.rise(heart.aorticGradient(), number("gradient-from"), number("gradient-to"));
        return Math.max(Math.min(1, of("left-ventricle-stiffness")), against);
    }

    /** A ventricle with much to send on lifts high and short, as long as it is strong. */
    private double volume() {
        double passes = Math.max(of("aortic-leak"), Math.max(of("mitral-leak"), of("arterial-duct") * 2));
        double asked = Math.max(0, heart.demand() - 1);
        return Heart.rise(Math.max(passes, asked), number("volume-from"), number("volume-to")) * heart.strength();
    }

    /** A first sound that can be felt. */
    private double tap() {
        double from = heart.number("s1.narrow-from");
        double narrow = Heart.rise(from - of("mitral-valve-area"), 0, heart.number("s1.narrow-span"));
        return narrow * of("mitral-pliability");
    }

    private double kick() {
        double thick = Heart.rise(of("outflow-obstruction"), 0, number("double"));
        return thick * heart.atrialKick();
    }

    public String character() {
        if (!felt()) {
            return "not-felt";
        }
        if (kick() >= 1) {
            return "double";
        }
        if (tap() >= number("plain")) {
            return "tapping";
        }
        if (sustained() >= number("plain") && sustained() >= volume()) {
            return "sustained";
        }
        if (volume() >= number("plain")) {
            return "thrusting";
        }
        boolean weak = heart.strength() < number("weak") && of("left-ventricle-dilatation") >= number("wide");
        return weak ? "diffuse" : "brief";
    }

    /** The quantities behind what is felt most. */
    public Set<String> quantities() {
        return switch (character()) {
            case "double" -> Set.of("outflow-obstruction");
            case "tapping" -> Set.of("mitral-valve-area");
            case "sustained" -> Set.of("left-ventricle-stiffness", "aortic-valve-area");
            case "thrusting" -> Set.of("aortic-leak", "mitral-leak", "arterial-duct", "output-demand", "thyroid-state");
            case "diffuse" -> Set.of("left-ventricle-contraction", "left-ventricle-dilatation");
            default -> Set.of();
        };
    }

    /** The lift of the apex so many milliseconds after the first sound, mm. */
    public double apex(double ms) {
        if (!felt()) {
            return 0;
        }
        double high = number("lift") * (1 + volume()) * (0.4 + 0.6 * heart.strength());
        double until =
                number("brief") + sustained() * (heart.systole() - number("brief")) + number("let-go") * volume();
        double main = high * bump(ms, 20, until);
        double tap = number("tap") * tap() * bump(ms, 0, 50);
        double beat = 60_000 / heart.rate();
        double atrial = high * 0.6 * kick() * bump(ms < beat / 2 ? ms + beat : ms, beat - 150, beat - 40);
        return Math.max(main, Math.max(tap, atrial));
    }

    /** Rises over 60 ms, stays, falls over 90 ms. */
    private static double bump(double ms, double from, double until) {
        double rises = (ms - from) / 60;
        double falls = (until + 90 - ms) / 90;
        return Math.max(0, Math.min(1, Math.min(rises, falls)));
    }

    /** How strongly a right ventricle under pressure or with much to send on lifts the chest wall: 1 is strong. */
    public double heave() {
        double pressure = Heart.rise(heart.rightVentricle(), number("right-from"), number("right-to"));
        return Math.max(pressure, number("right-volume") * of("atrial-shunt"));
    }

    /** The lift beside the breast bone, mm. */
    public double lifted(double ms) {
        return number("right-lift") * Heart.rise(heave(), number("right-felt"), 1) * bump(ms, 30, heart.systole() - 60);
    }
}
