package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
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

    /** One wave after an upstroke: how high, when its middle comes and how wide it is, in seconds. */
    private record Bell(double height, double centre, double width) {
        private static final double FAR = 5;

        double at(double since) {
            double along = (since - centre) / width;
            return Math.abs(along) > FAR ? 0 : height * Math.exp(-along * along / 2);
        }
    }

    /** How far the column stands above its mean at a moment, before the mean of the waves is taken off. */
    DoubleUnaryOperator over(Beats beats) {
        double quick = Math.min(1, beats.interval() / numbers.constant("venous-wave.interval"));
        List<Bell> bells =
                new ArrayList<>(List.of(bell("c", c, 0), bell("x", -x, 0), bell("v", v, leak), bell("y", -y, 0)));
        if (!apart) {
            bells.add(bell("a", a, 0));
        }
        DoubleUnaryOperator atria = apart ? atria(beats) : time -> 0;
        return time -> {
            double height = atria.applyAsDouble(time);
            for (double upstroke : beats.upstrokes()) {
                for (Bell bell : bells) {
                    height += bell.at((time - upstroke) / quick);
                }
            }
            return height;
        };
    }

    /** Atria at their own rate: where they meet a closed valve the wave is a cannon. */
    private DoubleUnaryOperator atria(Beats beats) {
        double interval = 60 / numbers.constant("venous-wave.atrial-rate");
        double after = numbers.constant("venous-wave.a.after");
        Bell open = bell("a", a, 0);
        Bell cannon = bell("a", a * numbers.constant("venous-wave.cannon"), 0);
        double closed = numbers.constant("venous-wave.closed");
        double start = numbers.constant("venous-wave.atrial-start");
        return time -> {
            double height = 0;
            for (int i = -1; i * interval < time + interval; i++) {
                double moment = i * interval + start;
                boolean meets = beats.upstrokes().stream().anyMatch(u -> moment > u && moment < u + closed);
                height += (meets ? cannon : open).at(time - moment + after);
            }
            return height;
        };
    }

    /** A leak brings v forward and spreads it. */
    private Bell bell(String wave, double height, double spread) {
        String name = "venous-wave." + wave;
        return new Bell(
                height,
                numbers.constant(name + ".after") - spread * numbers.constant("venous-wave.v.leak-earlier"),
                numbers.constant(name + ".width") + spread * numbers.constant("venous-wave.v.leak-wider"));
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
