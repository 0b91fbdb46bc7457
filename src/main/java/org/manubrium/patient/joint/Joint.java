package org.manubrium.patient.joint;

import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/** One joint, or a row of like joints, of one side. */
public record Joint(Body body, Side side, String name) {
    public static final List<String> NAMES = List.of(
            "finger-ends",
            "finger-middles",
            "knuckles",
            "thumb-base",
            "wrist",
            "elbow",
            "shoulder",
            "hip",
            "knee",
            "ankle",
            "big-toe");

    /** How much it is inflamed, 0..1. */
    public double inflamed() {
        return of("inflamed");
    }

    /** Fluid in it beyond what health has, in ml. */
    public double fluid() {
        return of("fluid");
    }

    /** By how much bone stands out at its edges, in mm. */
    public double bone() {
        return of("bone");
    }

    /** The share of its cartilage that is worn away, 0..1. */
    public double worn() {
        return of("worn");
    }

    /** How far its capsule is tightened, 0..1. */
    public double stiff() {
        return of("stiff");
    }

    /** How much it hurts on pressing and moving, 0..1. */
    public double pain() {
        return of("pain");
    }

    /** By how many degrees it leans from its line. */
    public double leans() {
        return of("leans");
    }

    /** The share of the tendon that lifts it that is torn, 0..1. */
    public double torn() {
        return of("torn");
    }

    /** By how much its soft parts stand out, in mm: the swollen lining and the fluid. */
    public double swollen() {
        return constant("joint.lining") * inflamed() + constant("joint.fluid-mm") * Math.sqrt(fluid());
    }

    private double of(String kind) {
        return body.quantity("joint." + side.word() + "." + name + "." + kind);
    }

    private double constant(String name) {
        return body.physiology().constant(name);
    }

    /** The pain of the joint that hurts most, 0..1. */
    public static double worstPain(Body body) {
        double worst = 0;
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            for (String name : NAMES) {
                worst = Math.max(worst, new Joint(body, side, name).pain());
            }
        }
        return worst;
    }
}
