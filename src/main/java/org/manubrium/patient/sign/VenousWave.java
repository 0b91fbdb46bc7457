package org.manubrium.patient.sign;

import org.manubrium.patient.Body;
import org.manubrium.patient.Physiology;

/**
 * The waves on the venous column, in millimetres: a before the carotid upstroke, c with it, the x descent in systole, v at
 * its end, the y descent when the tricuspid valve has opened. Each is a bell over time; the descents count downwards.
 *
 * @param leak the share by which v is spread over the whole of systole, 0..1
 * @param apart whether the atria beat at a rate of their own
 */
record VenousWave(Physiology numbers, double a, double c, double x, double v, double y, double leak, boolean apart) {

    static VenousWave of(Body body) {
        Physiology n = body.physiology();
        double passed = body.quantity("caval-patency") * filling(body);
        double leak = body.quantity("tricuspid-leak");
        double stenosis = body.quantity("tricuspid-stenosis");
        double restraint = body.quantity("pericardial-restraint");
        double fluid = body.quantity("pericardial-fluid");
        double atrial = body.quantity("atrial-contraction");
        double failing = 1 - body.quantity("right-heart-reserve");
        double resistance = stenosis * n.constant("venous-wave.a.stenosis")
                + body.quantity("right-ventricle-stiffness") * n.constant("venous-wave.a.stiffness");
        double a = n.constant("venous-wave.a")
                * atrial
                * (1 + resistance)
                * (1 - fluid * n.constant("venous-wave.a.fluid"));
        double x = n.constant("venous-wave.x")
                * (1 - (1 - atrial) * n.constant("venous-wave.x.unled"))
                * (1 - failing * n.constant("venous-wave.x.failing"))
                * (1 + restraint * n.constant("venous-wave.x.restraint"))
                * (1 - leak);
        double v = n.constant("venous-wave.v") * (1 + failing * n.constant("venous-wave.v.failing"))
                + leak * n.constant("venous-wave.v.leak");
        double y = (n.constant("venous-wave.y")
                        + leak * n.constant("venous-wave.y.leak")
                        + restraint * n.constant("venous-wave.y.restraint"))
                * (1 - stenosis * n.constant("venous-wave.y.stenosis"))
                * (1 - fluid);
        boolean apart = body.quantity("atrioventricular-dissociation") >= n.constant("venous-wave.apart-from");
        return new VenousWave(
                n, a * passed, n.constant("venous-wave.c") * passed, x * passed, v * passed, y * passed, leak, apart);
    }

    /** An emptying vein pulses less. */
    private static double filling(Body body) {
        double full = body.physiology().constant("venous-wave.full-from");
        return Math.min(1, body.quantity("right-atrial-pressure") / full);
    }

    /** How far the column stands above its mean at this moment, before the mean of the waves is taken off. */
    double at(Beats beats, double time) {
        double quick = Math.min(1, beats.interval() / numbers.constant("venous-wave.interval"));
        double height = apart ? atria(beats, time) : 0;
        for (double upstroke : beats.upstrokes()) {
            double since = (time - upstroke) / quick;
            height += (apart ? 0 : bell(since, "a", a, 0)) + bell(since, "c", c, 0) - bell(since, "x", x, 0);
            height += bell(since, "v", v, leak) - bell(since, "y", y, 0);
        }
        return height;
    }

    /** Atria at their own rate: where they meet a closed valve the wave is a cannon. */
    private double atria(Beats beats, double time) {
        double interval = 60 / numbers.constant("venous-wave.atrial-rate");
        double height = 0;
        for (int i = -1; i * interval < time + interval; i++) {
            double moment = i * interval + numbers.constant("venous-wave.atrial-start");
            boolean closed = beats.upstrokes().stream()
                    .anyMatch(u -> moment > u && moment < u + numbers.constant("venous-wave.closed"));
            double tall = closed ? a * numbers.constant("venous-wave.cannon") : a;
            height += bell(time - moment + numbers.constant("venous-wave.a.after"), "a", tall, 0);
        }
        return height;
    }

    /** A leak brings v forward and spreads it. */
    private double bell(double since, String wave, double height, double spread) {
        double centre = numbers.constant("venous-wave." + wave + ".after")
                - spread * numbers.constant("venous-wave.v.leak-earlier");
        double width = numbers.constant("venous-wave." + wave + ".width")
                + spread * numbers.constant("venous-wave.v.leak-wider");
        double along = (since - centre) / width;
        return Math.abs(along) > 5 ? 0 : height * Math.exp(-along * along / 2);
    }

    /** What a careful eye calls it; the most striking departure first. */
    String word() {
        if (Math.max(v, Math.max(a, x)) < numbers.constant("venous-wave.seen")) {
            return "still";
        }
        if (apart && a >= numbers.constant("venous-wave.seen")) {
            return "cannon-a";
        }
        if (v >= numbers.constant("venous-wave.tall")) {
            return "systolic-wave";
        }
        if (a < numbers.constant("venous-wave.seen")) {
            return "no-a";
        }
        if (a >= numbers.constant("venous-wave.tall")) {
            return "giant-a";
        }
        if (y >= numbers.constant("venous-wave.deep")) {
            return "deep-y";
        }
        return y < v * numbers.constant("venous-wave.shallow") ? "no-y" : "a-and-v";
    }
}
