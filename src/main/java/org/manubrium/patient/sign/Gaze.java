package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.Site;
import org.manubrium.patient.Body;

/**
 * Where one eye comes to stand, in degrees outwards (towards its own side) and upwards, when gaze is asked for. Six
 * muscles turn it, each by its own nerve; the eye at rest drifts towards those that have kept theirs.
 *
 * <p>Known limits: no skew, no torsion; a palsy is as wide at rest in every position of the head.
 */
record Gaze(Body body, Side eye) {
    private static final Set<String> CENTRES = Set.of(
            "pontine gaze centre",
            "abducens nucleus",
            "medial longitudinal fasciculus",
            "vertical gaze centre",
            "posterior commissure",
            "near centre");

    /** What is asked of the eye: 1 outwards or upwards, -1 inwards or downwards, 0 neither. */
    record Target(int outward, int upward) {
        static final Target AHEAD = new Target(0, 0);

        static Target of(String place) {
            List<String> words = List.of(place.split("-", -1));
            int outward = has(words, "outward", "out") - has(words, "inward", "in");
            return new Target(outward, has(words, "up", "up") - has(words, "down", "down"));
        }

        private static int has(List<String> words, String one, String other) {
            return words.contains(one) || words.contains(other) ? 1 : 0;
        }

        /** The same direction in space, told from the other eye. */
        Target fromTheOtherEye() {
            return new Target(-outward, upward);
        }
    }

    Pathway path(String way) {
        return CranialMotor.tract(body, way.equals("converge") ? way : "gaze " + way, eye);
    }

    private double drive(String way) {
        return body.conduction(path(way));
    }

    /** What nerve and muscle alone still hold: a lesion of a gaze centre leaves the eye straight. */
    private double tone(String way) {
        double kept = 1;
        for (Site site : path(way).sites()) {
            if (!CENTRES.contains(site.structure())) {
                kept *= body.kept(site);
            }
        }
        return kept;
    }

    /** Degrees outwards. */
    double outward(Target target) {
        double rest = number("gaze.drift-across") * (tone("outward") - tone("inward"));
        if (target.outward() == 0) {
            return rest;
        }
        boolean out = target.outward() > 0;
        double drive = out ? drive("outward") * (1 - tight("tight-inner")) : drive("inward");
        double reached = range(out ? "gaze.outward" : "gaze.inward") * drive * target.outward();
        return reached + (1 - drive) * held(rest, target.outward());
    }

    /** A drift helps nobody: it only holds back. */
    private static double held(double rest, int direction) {
        return direction > 0 ? Math.min(rest, 0) : Math.max(rest, 0);
    }

    /** Degrees upwards. */
    double upward(Target target) {
        double rest = number("gaze.drift-up") * (paired("up", target) - paired("down", target));
        if (target.upward() == 0) {
            return rest;
        }
        boolean up = target.upward() > 0;
        double drive = up ? driven("up", target) * (1 - tight("tight-lower")) : driven("down", target);
        double reached = (up ? upRange() : range("gaze.down")) * drive * target.upward();
        return reached + (1 - drive) * held(rest, target.upward());
    }

    private double upRange() {
        double years = Math.max(0, body.person().age() - number("gaze.up-age-from"));
        return range("gaze.up") - years * number("gaze.up-age-loss");
    }

    private double driven(String way, Target target) {
        return mixed(drive(way + "-out"), drive(way + "-in"), target);
    }

    private double paired(String way, Target target) {
        return mixed(tone(way + "-out"), tone(way + "-in"), target);
    }

    /** The recti raise and lower an eye that is turned out, the obliques rather one that is turned in. */
    private double mixed(double rectus, double oblique, Target target) {
        String where = target.outward() > 0 ? "out" : target.outward() < 0 ? "in" : "straight";
        double share = number("gaze." + where + "-share");
        return share * rectus + (1 - share) * oblique;
    }

    /** The share of its healthy range that the eye goes in the direction asked, 0..1. */
    double share(Target target) {
        if (target.upward() == 0) {
            String range = target.outward() > 0 ? "gaze.outward" : "gaze.inward";
            return share(outward(target) * target.outward() / range(range));
        }
        return share(upward(target) * target.upward() / (target.upward() > 0 ? upRange() : range("gaze.down")));
    }

    private static double share(double of) {
        return Math.max(0, Math.min(1, of));
    }

    /** What converging is driven with, 0..1. */
    double converging() {
        return drive("converge");
    }

    private double tight(String muscle) {
        return body.quantity(orbit(muscle));
    }

    String orbit(String kind) {
        return "orbit." + eye.word() + "." + kind;
    }

    private double range(String name) {
        double own = 1 + number("gaze.own-range") * body.person().variation().of(name, eye);
        return number(name) * own;
    }

    double number(String name) {
        return body.physiology().constant(name);
    }
}
