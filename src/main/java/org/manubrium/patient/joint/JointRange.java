package org.manubrium.patient.joint;

import org.manubrium.patient.Body;

/**
 * How far a joint moves in one direction, in degrees.
 *
 * @param movement as it is tabled: "shoulder-abduction", "knee-flexion"
 */
public record JointRange(Joint joint, String movement) {

    /** Moved by the examiner: what the capsule, the worn surfaces, the swelling and the years leave. */
    public double passive() {
        double taken = constant("stiff") * joint.stiff()
                + constant("worn") * joint.worn()
                + constant("inflamed") * joint.inflamed()
                + constant("fluid") * joint.fluid() / 100;
        Body body = joint.body();
        double years = Math.max(0, body.person().age() - body.physiology().constant("range.age"));
        double left = constant("full") * (1 - years * body.physiology().constant("range.per-year"));
        return left * (1 - Math.min(body.physiology().constant("range.most-taken"), taken));
    }

    /** Moved by the patient: a torn tendon and pain take from what the joint would allow. */
    public double active() {
        double hurts = joint.body().physiology().constant("range.pain") * joint.pain();
        return passive() * (1 - constant("torn") * joint.torn()) * (1 - hurts);
    }

    /** The least that passes as normal. */
    public double least() {
        return constant("least");
    }

    private double constant(String of) {
        return joint.body().physiology().constant("range." + movement + "." + of);
    }
}
