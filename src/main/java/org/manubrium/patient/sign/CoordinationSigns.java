package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.LimbSign.measured;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.appearance.Appearance;

/** How smoothly, evenly and quickly a limb moves. Judged only where there is power to move it. */
final class CoordinationSigns {
    private CoordinationSigns() {}

    static Map<String, LimbSign> all() {
        Map<String, LimbSign> found = new HashMap<>();
        found.put("finger-nose", aimed("arm", "elbow-flexion"));
        found.put("heel-shin", aimed("leg", "hip-flexion"));
        found.put("rapid-alternating", rhythm("arm", "forearm-pronation", new Beat("hand turned over", "degrees", 32)));
        found.put("finger-tapping", rhythm("arm", "finger-flexion", new Beat("finger and thumb apart", "cm", 1.4)));
        found.put(
                "thumb-to-fingers",
                rhythm("arm", "thumb-opposition", new Beat("thumb away from the fingers", "cm", 0.8)));
        found.put(
                "foot-tapping",
                rhythm("leg", "ankle-dorsiflexion", new Beat("ball of the foot off the floor", "cm", 1)));
        found.put("rebound", rebound());
        return found;
    }

    private static LimbSign aimed(String area, String movement) {
        return new LimbSign(
                "aimed-path",
                "true",
                (body, side) -> aim(new LimbState(body, area, side), movement),
                List.of(
                        measured("strays from the line by at most", "cm", "stray"),
                        measured("takes", "s", "seconds"),
                        measured("with eyes shut ends beside the mark by", "cm", "blind")),
                CoordinationSigns::path,
                (body, side) -> paths(new LimbState(body, area, side), movement),
                side -> Set.of(Attention.limb(area, side)));
    }

    private static String aim(LimbState limb, String movement) {
        if (limb.power(movement) < number(limb, "limb.power-to-judge")) {
            return "cannot";
        }
        if (limb.most(limb.unsteered())) {
            return "zigzag";
        }
        if (limb.unfelt() >= number(limb, "limb.unfelt")) {
            return "lost-eyes-shut";
        }
        return slow(limb, movement) ? "slow" : "true";
    }

    private static boolean slow(LimbState limb, String movement) {
        return limb.undriven() >= number(limb, "limb.drive-lost")
                || limb.power(movement) < number(limb, "limb.power-to-be-quick")
                || limb.upperLost(movement) >= number(limb, "limb.upper-slows");
    }

    /** What is beaten: a movement, its unit, and how much of it goes with each tabled unit of size. */
    private record Beat(String name, String unit, double much) {}

    private static LimbSign rhythm(String area, String movement, Beat beat) {
        return new LimbSign(
                "tapping",
                "even",
                (body, side) -> beat(new LimbState(body, area, side), movement),
                List.of(measured("beats in ten seconds", "", "beats")),
                numbers -> taps(numbers, beat),
                (body, side) -> paths(new LimbState(body, area, side), movement),
                side -> Set.of(Attention.limb(area, side)));
    }

    private static String beat(LimbState limb, String movement) {
        if (limb.power(movement) < number(limb, "limb.power-to-judge")) {
            return "cannot";
        }
        if (limb.undriven() >= number(limb, "limb.drive-lost")) {
            return "dwindling";
        }
        if (limb.most(limb.unsteered()) || limb.most(limb.unbraked())) {
            return "irregular";
        }
        return slow(limb, movement) ? "slow" : "even";
    }

    private static LimbSign rebound() {
        return new LimbSign(
                "rebound",
                "checked",
                (body, side) ->
                        LimbState.arm(body, side).most(LimbState.arm(body, side).unsteered())
                                ? "overshoots"
                                : "checked",
                List.of(measured("arm moves beyond its place by", "cm", "past")),
                numbers -> List.of(LimbNumbers.curve(
                        "arm beyond its place",
                        "cm",
                        20,
                        60,
                        t -> numbers.of("past") * LimbNumbers.bump(t, 0.35, 0.18))),
                (body, side) -> List.of(LimbState.arm(body, side).steering()));
    }

    private static List<Strand> paths(LimbState limb, String movement) {
        List<Strand> found = new ArrayList<>(List.of(limb.steering(), limb.drive(), limb.brake()));
        found.add(limb.upper(movement));
        found.add(limb.lower(movement));
        found.add(limb.position());
        return List.copyOf(found);
    }

    /** Sideways straying on the way, which grows towards the target. */
    private static List<Appearance.Curve> path(LimbNumbers numbers) {
        double stray = numbers.of("stray");
        double seconds = numbers.of("seconds");
        return List.of(
                LimbNumbers.curve("to the side of the line", "cm", 20, 150, t -> {
                    double along = Math.min(1, t / seconds);
                    return stray * along * along * Math.sin(2 * Math.PI * 3.2 * t + LimbNumbers.uneven(t));
                }),
                LimbNumbers.curve("of the way", "%", 20, 150, t -> {
                    double along = Math.min(1, t / seconds);
                    double past = numbers.of("past") * LimbNumbers.bump(t, seconds + 0.12, 0.16);
                    return 100 * numbers.of("reach") * along * along * (3 - 2 * along) + past;
                }));
    }

    private static List<Appearance.Curve> taps(LimbNumbers numbers, Beat beat) {
        double hertz = numbers.of("beats") / 10;
        double jitter = numbers.of("jitter");
        double shrink = numbers.of("shrink");
        double size = numbers.of("size") * beat.much();
        return List.of(LimbNumbers.curve(beat.name(), beat.unit(), 20, 500, t -> {
            double phase = hertz * t + jitter * LimbNumbers.uneven(t);
            double left = Math.max(0.12, 1 - shrink * t / 10) * (1 + jitter * LimbNumbers.uneven(t * 2.3));
            return size * left * (1 - Math.cos(2 * Math.PI * phase)) / 2;
        }));
    }

    private static double number(LimbState limb, String name) {
        return LimbState.constant(limb.body(), name);
    }
}
