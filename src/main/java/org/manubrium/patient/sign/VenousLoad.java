package org.manubrium.patient.sign;

import org.manubrium.patient.Body;
import org.manubrium.patient.Physiology;

/**
 * What more blood does to the venous column: a hand on the belly, a breath in. A right heart with reserve takes it; one
 * that fails or is held tight passes it back to the neck.
 *
 * @param open the share of the great vein that is open, 0..1
 * @param refused the share of the added blood that is passed back under pressure, 0..1
 * @param stiff the same for a breath in
 */
record VenousLoad(Physiology numbers, double open, double refused, double stiff) {

    static VenousLoad of(Body body) {
        Physiology numbers = body.physiology();
        double failing = 1 - body.quantity("right-heart-reserve");
        double restraint = body.quantity("pericardial-restraint");
        double stenosis = body.quantity("tricuspid-stenosis");
        double valve =
                Math.max(stenosis, body.quantity("tricuspid-leak")) * numbers.constant("neck-vein.valve-refuses");
        return new VenousLoad(
                numbers,
                body.quantity("caval-patency"),
                Math.max(Math.max(failing, restraint), valve),
                Math.max(
                        restraint,
                        Math.max(
                                failing * numbers.constant("neck-vein.failing-stiff"),
                                stenosis * numbers.constant("neck-vein.stenosis-stiff"))));
    }

    double pressFrom() {
        return numbers.constant("neck-vein.press-from");
    }

    double pressUntil() {
        return pressFrom() + numbers.constant("neck-vein.press-seconds");
    }

    /** By how many centimetres the column stands higher at this moment of the test. */
    double pressed(double time) {
        double since = time - pressFrom();
        if (since <= 0) {
            return 0;
        }
        double held = Math.min(since, numbers.constant("neck-vein.press-seconds"));
        double after = since - held;
        return risen(held) * Math.exp(-after / numbers.constant("neck-vein.release-seconds"));
    }

    private double risen(double held) {
        double start = 1 - Math.exp(-held / numbers.constant("neck-vein.rise-seconds"));
        double brief = numbers.constant("neck-vein.brief-rise")
                * (1 - refused)
                * Math.exp(-held / numbers.constant("neck-vein.settle-seconds"));
        return open * start * (brief + refused * numbers.constant("neck-vein.most-rise"));
    }

    /** The rise still there at the end of the pressure, in centimetres, as far as the neck lets it be seen. */
    double held(VenousColumn column, double angle) {
        double before = column.height(angle);
        double after = before + risen(numbers.constant("neck-vein.press-seconds"));
        return column.seen(after, angle) - column.seen(before, angle);
    }

    /** How far a breath in moves the column, in centimetres. */
    private double breathShift() {
        double most = numbers.constant("neck-vein.breath");
        return open * most * (2 * stiff - 1);
    }

    double breathed(double time) {
        return breathShift() * breath(time);
    }

    /** How far breathed in at this moment, 0..1. */
    double breath(double time) {
        return Math.pow(Math.sin(Math.PI * time / numbers.constant("neck-vein.breath-seconds")), 2);
    }

    String breathing() {
        double shift = breathShift();
        double seen = numbers.constant("neck-vein.breath-seen");
        return shift < -seen ? "falls" : shift > seen ? "rises" : "unchanged";
    }
}
