package org.manubrium.patient.heart;

/**
 * One rush of blood. Its noise grows with the square of the pressure that drives it and with the flow.
 *
 * @param level at its source, dB against a healthy first sound at the apex
 * @param gradient the pressure that drives it, mmHg: the more, the higher its pitch
 * @param from when it begins, as a share of systole or of diastole; {@code to} when it ends
 * @param peak when it is loudest, as a share of its own length
 */
public record Jet(JetKind kind, double level, double gradient, double from, double to, double peak) {

    static Jet of(Heart heart, JetKind kind, double gradient, double flow, double from, double to, double peak) {
        double power = Math.max(0, gradient) * Math.max(0, gradient) * Math.max(0, flow);
        double level = 10 * Math.log10(power + 1e-6) - heart.number("jet.reference");
        return new Jet(kind, level, Math.max(0, gradient), from, to, peak);
    }

    Jet louder(double decibel) {
        return new Jet(kind, level + decibel, gradient, from, to, peak);
    }

    public double length() {
        return to - from;
    }

    /** The lower edge of its noise, Hz. */
    public double low(Heart heart) {
        return heart.number(kind.low()) * quickness(heart);
    }

    /** The upper edge of its noise, Hz. */
    public double high(Heart heart) {
        return heart.number(kind.high()) * quickness(heart);
    }

    /** Blood that is driven harder rushes faster, by the root of the pressure, and sounds higher. */
    private double quickness(Heart heart) {
        double usual = heart.number(kind.usual());
        double speed = Math.pow(gradient / usual, 0.25);
        return Math.min(heart.number("jet.highest"), Math.max(heart.number("jet.lowest"), speed));
    }
}
