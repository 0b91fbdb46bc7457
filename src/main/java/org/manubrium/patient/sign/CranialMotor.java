package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/**
 * The strength of a movement that cranial nerves make. Where both hemispheres drive it, one is enough: so much of the
 * drive as the movement needs stands in the constant {@code need}.
 */
final class CranialMotor {
    private CranialMotor() {}

    /** 0..1 of the healthy strength. */
    static double strength(Body body, String part, Side side) {
        double drive = body.conduction(upper(body, part, side));
        double needed = body.physiology().constant("need." + part);
        return body.conduction(lower(body, part, side)) * Math.min(1, drive / needed);
    }

    static Pathway lower(Body body, String part, Side side) {
        return tract(body, part + " lower", side);
    }

    static Pathway upper(Body body, String part, Side side) {
        return tract(body, part + " upper", side);
    }

    /** A tract of the head: none of its rows asks which segment is served. */
    static Pathway tract(Body body, String name, Side side) {
        return body.anatomy().tract(name, side, Segment.C1, "");
    }

    static List<Strand> strands(Body body, String part, Side side) {
        return List.of(
                new Strand(part + "-lower", lower(body, part, side)),
                new Strand(part + "-upper", upper(body, part, side)));
    }
}
