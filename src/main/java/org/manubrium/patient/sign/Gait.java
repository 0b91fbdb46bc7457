package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Phase;

/** How a body walks: the plainest of what it lacks gives the pattern. */
final class Gait {
    private static final List<Side> SIDES = List.of(Side.RIGHT, Side.LEFT);

    private Gait() {}

    /** The pattern; {@code watched} if the patient knows that he is seen, when attention can get in the way. */
    static String read(Body body, boolean watched) {
        if (both(s -> weak(body, s)) || SIDES.stream().anyMatch(s -> helpless(body, s))) {
            return "cannot-walk";
        }
        if (watched && body.quantity("attended.walking") >= number(body, "limb.attended")) {
            return "lurching-caught";
        }
        String dragged = watched ? sided("dragging", s -> attended(body, s)) : "";
        return first(
                dragged,
                stiff(body),
                braked(body),
                glued(body),
                shuffling(body),
                StandingSigns.unsteered(body) ? "wide" : "",
                both(s -> LimbState.leg(body, s).unfelt() >= number(body, "limb.unfelt")) ? "stamping" : "",
                both(s -> power(body, "hip-abduction", s) < number(body, "limb.power-to-hold-pelvis"))
                        ? "waddling"
                        : "",
                sided("dropped", s -> power(body, "ankle-dorsiflexion", s) < number(body, "limb.power-to-lift-foot")),
                sided("dipping", s -> power(body, "hip-abduction", s) < number(body, "limb.power-to-hold-pelvis")),
                sided("veers", s -> StandingSigns.unbalanced(body, s)),
                sided("arm-still", s -> armUndriven(body, s) >= number(body, "limb.drive-lost")));
    }

    private static String first(String... patterns) {
        for (String pattern : patterns) {
            if (!pattern.isEmpty()) {
                return pattern;
            }
        }
        return "usual";
    }

    /** A stiff leg is swung round; where the arm of its side is spared, that arm swings as it always did. */
    private static String stiff(Body body) {
        if (both(s -> released(body, s))) {
            return "crossing";
        }
        String bent = sided("swinging-round", s -> released(body, s) && armStiff(body, s));
        return bent.isEmpty() ? sided("leg-swung-round", s -> released(body, s)) : bent;
    }

    private static boolean armStiff(Body body, Side side) {
        return LimbState.arm(body, side).upperLost("elbow-extension") >= number(body, "limb.stiff-gait-from");
    }

    private static double armUndriven(Body body, Side side) {
        return LimbState.arm(body, side).undriven();
    }

    private static boolean released(Body body, Side side) {
        LimbState leg = LimbState.leg(body, side);
        return leg.upperLost("ankle-dorsiflexion") >= number(body, "limb.stiff-gait-from")
                && leg.released("knee-reflex") * leg.arc("knee-reflex") >= number(body, "limb.spastic-from");
    }

    private static String braked(Body body) {
        return both(s -> LimbState.leg(body, s).most(LimbState.leg(body, s).unbraked())) ? "dancing" : "";
    }

    private static String glued(Body body) {
        return both(s -> unstepped(body, s) >= number(body, "limb.stepping-lost")) ? "glued" : "";
    }

    private static String shuffling(Body body) {
        double undriven = 0;
        for (Side side : SIDES) {
            undriven += LimbState.leg(body, side).undriven() / 2;
        }
        if (undriven < number(body, "limb.shuffle-from")) {
            return "";
        }
        String worse = sided("shuffling", s -> armUndriven(body, s) >= number(body, "limb.arm-still-from"));
        return worse.isEmpty() ? "shuffling" : worse;
    }

    private static double unstepped(Body body, Side side) {
        return body.lost(body.anatomy().tract("stepping", side, Segment.L4, "leg"), Phase.LOSS);
    }

    private static boolean attended(Body body, Side side) {
        return body.quantity(Attention.limb("leg", side)) >= number(body, "limb.attended");
    }

    private static boolean weak(Body body, Side side) {
        return power(body, "knee-extension", side) < number(body, "limb.power-to-stand");
    }

    /** A leg that neither hip nor knee can hold straight carries nobody. */
    private static boolean helpless(Body body, Side side) {
        return weak(body, side) && power(body, "hip-extension", side) < number(body, "limb.power-to-stand");
    }

    private static double power(Body body, String movement, Side side) {
        return LimbState.leg(body, side).passed(movement);
    }

    private static boolean both(Predicate<Side> holds) {
        return holds.test(Side.RIGHT) && holds.test(Side.LEFT);
    }

    /** The pattern with its side, without one where it holds on both, blank where on neither. */
    private static String sided(String pattern, Predicate<Side> holds) {
        if (both(holds)) {
            return pattern;
        }
        return holds.test(Side.RIGHT) ? pattern + "-right" : holds.test(Side.LEFT) ? pattern + "-left" : "";
    }

    static List<Strand> paths(Body body) {
        List<Strand> found = new ArrayList<>(StandingSigns.paths(body));
        for (Side side : SIDES) {
            LimbState leg = LimbState.leg(body, side);
            found.add(leg.drive());
            found.add(leg.brake());
            found.add(LimbState.arm(body, side).drive());
            found.add(LimbState.arm(body, side).upper("elbow-extension"));
            found.add(new Strand("stepping", body.anatomy().tract("stepping", side, Segment.L4, "leg")));
            for (String movement : List.of("ankle-dorsiflexion", "hip-abduction")) {
                found.add(leg.upper(movement));
                found.add(leg.lower(movement));
            }
        }
        return found;
    }

    private static double number(Body body, String name) {
        return LimbState.constant(body, name);
    }
}
