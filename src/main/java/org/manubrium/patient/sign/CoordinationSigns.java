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
        found.put("finger-nose", aimed("arm", "elbow-flexion", new Way("hand above the lap", 54)));
        found.put("heel-shin", aimed("leg", "hip-flexion", new Way("heel above the bed", 12)));
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

    /** Over what the limb is lifted to the line on which it moves, and how high, in centimetres. */
    private record Way(String lifted, double high) {}

    private static LimbSign aimed(String area, String movement, Way way) {
        return new LimbSign(
                "aimed-path",
                "true",
                (body, side) -> aim(new LimbState(body, area, side), movement),
                List.of(
                        measured("strays sideways by at most", "cm", "stray"),
                        measured("moves for", "s", "seconds"),
                        measured("with eyes shut ends away from the mark by", "cm", "blind." + area)),
                numbers -> path(numbers, way),
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

    /** Sideways straying on the way, which grows towards the target, and how high the limb is held. */
    private static List<Appearance.Curve> path(LimbNumbers numbers, Way way) {
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
                }),
                LimbNumbers.curve(way.lifted(), "cm", 20, 150, t -> way.high() * held(numbers, t)));
    }

    /** The share of the height that is held; what cannot be held is lifted twice a little and falls back. */
    private static double held(LimbNumbers numbers, double t) {
        double tried = LimbNumbers.bump(t, 0.7, 0.25) + 0.7 * LimbNumbers.bump(t, 1.9, 0.25);
        return numbers.of("held") + numbers.of("tried") * tried;
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
