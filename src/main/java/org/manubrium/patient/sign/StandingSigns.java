package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.LimbSign.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;
import org.manubrium.patient.Phase;

/** Standing: with open and shut eyes, on one leg, up from a chair. */
final class StandingSigns {
    /** By how much the hips rise from the seat to standing. */
    private static final double STANDING_CM = 45;

    private StandingSigns() {}

    static Map<String, LimbSign> all() {
        return Map.of(
                "romberg", romberg(),
                "trendelenburg", trendelenburg(),
                "chair-rise", rise());
    }

    private static LimbSign romberg() {
        return new LimbSign(
                "sway",
                "steady",
                (body, side) -> stance(body),
                List.of(
                        measured("sways with eyes open by", "cm", "open"),
                        measured("sways with eyes shut by", "cm", "shut")),
                StandingSigns::swaying,
                (body, side) -> paths(body),
                side -> Set.of(
                        "attended.walking", Attention.limb("leg", Side.RIGHT), Attention.limb("leg", Side.LEFT)));
    }

    /** Twenty seconds with open eyes and twenty with shut, sideways and to the front. */
    private static List<Appearance.Curve> swaying(LimbNumbers numbers) {
        List<Appearance.Curve> found = new ArrayList<>();
        for (String eyes : List.of("open", "shut")) {
            double most = numbers.of(eyes);
            double from = eyes.equals("open") ? 0 : 9;
            found.add(sway("eyes " + eyes + ", to the right", most, from, 0.2));
            found.add(sway("eyes " + eyes + ", to the front", 0.7 * most, from + 40, 0.24));
        }
        return List.copyOf(found);
    }

    /** A wandering line that reaches the given number of centimetres once and never more. */
    private static Appearance.Curve sway(String name, double most, double from, double pace) {
        double highest = 0;
        for (int i = 0; i <= 200; i++) {
            highest = Math.max(highest, Math.abs(wander(i / 10.0, from, pace)));
        }
        double by = most / highest;
        return LimbNumbers.curve(name, "cm", 100, 201, t -> by * wander(t, from, pace));
    }

    private static double wander(double t, double from, double pace) {
        return LimbNumbers.uneven(t * pace + from) * Math.min(1, t / 2);
    }

    /** Not a test of the cerebellum: who is unsteady with open eyes already cannot be tested further. */
    private static String stance(Body body) {
        if (unsteered(body) || tooWeak(body) || body.quantity("attended.walking") >= number(body, "limb.attended")) {
            return "unsteady-eyes-open";
        }
        double felt = Math.min(
                LimbState.leg(body, Side.RIGHT).unfelt(),
                LimbState.leg(body, Side.LEFT).unfelt());
        return felt >= number(body, "limb.unfelt") || unbalanced(body, Side.RIGHT) || unbalanced(body, Side.LEFT)
                ? "falls-eyes-shut"
                : "steady";
    }

    static boolean unsteered(Body body) {
        boolean trunk = body.lost(body.anatomy().tract("trunk steering", Side.NONE, Segment.T6, "trunk"), Phase.LOSS)
                >= number(body, "limb.plain");
        LimbState right = LimbState.leg(body, Side.RIGHT);
        LimbState left = LimbState.leg(body, Side.LEFT);
        return trunk || right.most(right.unsteered()) || left.most(left.unsteered());
    }

    static boolean unbalanced(Body body, Side side) {
        return body.lost(body.anatomy().tract("balance", side, Segment.C1, "trunk"), Phase.LOSS)
                >= number(body, "limb.unbalanced");
    }

    private static boolean tooWeak(Body body) {
        double least = number(body, "limb.power-to-stand");
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            if (LimbState.leg(body, side).power("knee-extension") < least
                    || LimbState.leg(body, side).power("hip-extension") < least) {
                return true;
            }
        }
        return false;
    }

    static List<Strand> paths(Body body) {
        List<Strand> found = new ArrayList<>();
        found.add(new Strand("trunk-steering", body.anatomy().tract("trunk steering", Side.NONE, Segment.T6, "trunk")));
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            LimbState leg = LimbState.leg(body, side);
            found.add(leg.steering());
            found.add(leg.position());
            found.add(new Strand("balance", body.anatomy().tract("balance", side, Segment.C1, "trunk")));
            found.add(leg.upper("hip-extension"));
            found.add(leg.lower("hip-extension"));
            found.add(leg.upper("knee-extension"));
            found.add(leg.lower("knee-extension"));
        }
        return found;
    }

    /** Standing on one leg: the other half of the pelvis drops where the hip abductors are too weak to hold it. */
    private static LimbSign trendelenburg() {
        return new LimbSign(
                "one-leg-stand",
                "level",
                (body, side) ->
                        LimbState.leg(body, side).power("hip-abduction") < number(body, "limb.power-to-hold-pelvis")
                                ? "drops"
                                : "level",
                List.of(measured("other half of the pelvis drops by", "degrees", "drop")),
                numbers -> List.of(LimbNumbers.curve(
                        "other half of the pelvis down",
                        "degrees",
                        50,
                        61,
                        t -> numbers.of("drop") * Math.max(0, Math.min(1, t - 0.5)))),
                (body, side) -> List.of(
                        LimbState.leg(body, side).lower("hip-abduction"),
                        LimbState.leg(body, side).upper("hip-abduction")),
                side -> Set.of(Attention.limb("leg", side)));
    }

    private static LimbSign rise() {
        return new LimbSign(
                "chair-rise",
                "rises",
                (body, side) -> up(body),
                List.of(
                        measured("weight on the arms", "% of body weight", "arms"),
                        measured("moves for", "s", "seconds"),
                        measured("hips raised by", "cm", "height")),
                StandingSigns::rising,
                (body, side) -> {
                    List<Strand> found = new ArrayList<>(paths(body));
                    found.add(LimbState.leg(body, Side.RIGHT).drive());
                    found.add(LimbState.leg(body, Side.LEFT).drive());
                    return found;
                },
                side -> Set.of(Attention.limb("leg", Side.RIGHT), Attention.limb("leg", Side.LEFT)));
    }

    /** The hips above the seat, the trunk bent forward and the weight on the arms, for seven seconds. */
    private static List<Appearance.Curve> rising(LimbNumbers numbers) {
        double seconds = numbers.of("seconds");
        double height = numbers.of("height");
        return List.of(
                LimbNumbers.curve("hips above the seat", "cm", 50, 141, t -> {
                    double along = Math.min(1, Math.max(0, t / seconds - 0.3) / 0.7);
                    return height * along * along * (3 - 2 * along) * stays(height, t / seconds);
                }),
                LimbNumbers.curve(
                        "trunk bent forward", "degrees", 50, 141, t -> 42 * LimbNumbers.bump(t / seconds, 0.4, 0.3)),
                LimbNumbers.curve(
                        "weight on the arms",
                        "%",
                        50,
                        141,
                        t -> Math.min(1, t / 0.3) * numbers.of("arms") * LimbNumbers.bump(t / seconds, 0.45, 0.3)));
    }

    /** The share of the height that is kept: who does not get all the way up sinks back on the seat. */
    private static double stays(double height, double along) {
        double sunk = Math.min(1, Math.max(0, (along - 1) / 0.3));
        return 1 - (1 - Math.min(1, height / STANDING_CM)) * sunk * sunk * (3 - 2 * sunk);
    }

    private static String up(Body body) {
        double push = 0;
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            LimbState leg = LimbState.leg(body, side);
            push += Math.min(leg.power("hip-extension"), leg.power("knee-extension")) / 2;
        }
        if (push < number(body, "limb.power-to-stand")) {
            return "cannot";
        }
        double undriven = (LimbState.leg(body, Side.RIGHT).undriven()
                        + LimbState.leg(body, Side.LEFT).undriven())
                / 2;
        boolean slow = undriven >= number(body, "limb.cogwheel-from");
        return push < number(body, "limb.power-to-rise") || slow ? "uses-arms" : "rises";
    }

    static double number(Body body, String name) {
        return LimbState.constant(body, name);
    }
}
