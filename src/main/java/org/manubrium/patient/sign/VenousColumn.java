package org.manubrium.patient.sign;

import org.manubrium.patient.Body;
import org.manubrium.patient.Physiology;

/**
 * The column of blood in the internal jugular vein. Its height above the sternal angle is the pressure at its foot less the
 * height of the sternal angle above the right atrium, which grows as the bed is raised. It is seen only between the
 * clavicle and the jaw. Heights in centimetres, pressures in centimetres of water, angles in degrees.
 */
record VenousColumn(Physiology numbers, double pressure, Line offset) {
    private static final int OFFSETS = 4;
    private static final int UPRIGHT = 90;

    /** Where the great vein is blocked, the column stands on the pressure above the block, not on the right atrium. */
    static VenousColumn of(Body body) {
        Physiology numbers = body.physiology();
        double open = body.quantity("caval-patency");
        double pressure = open * body.quantity("right-atrial-pressure")
                + (1 - open) * numbers.constant("neck-vein.blocked-pressure");
        return new VenousColumn(numbers, pressure, Line.read(numbers, "neck-vein.offset", OFFSETS));
    }

    /** The height of its top, seen or not. */
    double height(double angle) {
        return pressure - offset.value(angle);
    }

    double clavicle(double angle) {
        double lean = Math.toRadians(angle);
        return numbers.constant("neck-vein.clavicle-along") * Math.sin(lean)
                - numbers.constant("neck-vein.clavicle-behind") * Math.cos(lean);
    }

    double jaw(double angle) {
        double lean = Math.toRadians(angle + numbers.constant("neck-vein.pillow"));
        return clavicle(angle) + numbers.constant("neck-vein.length") * Math.sin(lean);
    }

    /** What is seen of a top at this height: the clavicle hides what is lower, the jaw what is higher. */
    double seen(double height, double angle) {
        return Math.max(clavicle(angle), Math.min(jaw(angle), height));
    }

    boolean hidden(double angle) {
        return height(angle) <= clavicle(angle);
    }

    boolean full(double angle) {
        return height(angle) >= jaw(angle);
    }

    /** The angle, in whole degrees, at which the top stands nearest to the middle of the neck. */
    double tilt() {
        double best = 0;
        double nearest = Double.MAX_VALUE;
        for (int angle = 0; angle <= UPRIGHT; angle++) {
            double off = Math.abs(height(angle) - (clavicle(angle) + jaw(angle)) / 2);
            if (off < nearest) {
                nearest = off;
                best = angle;
            }
        }
        return best;
    }
}
