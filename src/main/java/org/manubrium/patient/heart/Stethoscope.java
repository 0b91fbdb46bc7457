package org.manubrium.patient.heart;

import java.util.Set;

/**
 * A stethoscope on the chest of someone in a position.
 *
 * @param place an area of the chest, by its id
 * @param piece bell or diaphragm
 * @param position how the patient lies, sits or stands
 * @param heldOut whether the breath is held at the end of a breath out
 */
public record Stethoscope(Heart heart, String place, String piece, String position, boolean heldOut) {
    private static final Set<String> LEANING = Set.of("left-side", "sitting-forward");

    private double number(String name) {
        return heart.number(name);
    }

    /** How loud a jet is here, dB against a healthy first sound at the apex. */
    public double hears(Jet jet) {
        String stem = "jet." + jet.kind().id() + ".";
        double carried = number(stem + place);
        double far = number("place." + place + ".far")
                * number("jet.short-carry")
                * (1 - Heart.rise(jet.gradient(), 0, number("jet.carries")));
        double pitch = Math.sqrt(jet.low(heart) * jet.high(heart));
        return jet.level() + carried + far + cut(pitch) + posture(jet.kind().id()) + heart.cover() + heart.wall();
    }

    /** How loud a thud is here. */
    public double hears(Thud thud) {
        String stem = "sound." + thud.id() + ".";
        String family = thud.id().startsWith("third") || thud.id().startsWith("fourth") ? "low" : "sharp";
        return thud.level() + number(stem + place) + cut(number(stem + "hertz")) + posture(family) + heart.wall();
    }

    /** What the chest piece takes away at a pitch: the diaphragm what is low, the bell what is high. */
    private double cut(double hertz) {
        double octaves = Math.log(hertz / number(piece + ".even")) / Math.log(2);
        double slope = number(piece + ".per-octave");
        return piece.equals("bell") ? -slope * Math.max(0, octaves) : -slope * Math.max(0, -octaves);
    }

    /** Leaning on a part of the heart brings it nearer; so does letting the breath out for what lies under the lung. */
    public double posture(String what) {
        double leaning = LEANING.contains(position) ? number("posture." + position + "." + what) : 0;
        return leaning + (heldOut ? number("held-out." + what) : 0);
    }

    public boolean audible(double level) {
        return level >= number("audible");
    }
}
