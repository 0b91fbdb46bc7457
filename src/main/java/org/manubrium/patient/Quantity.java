package org.manubrium.patient;

import org.manubrium.anatomy.Side;

/**
 * A part of the body's state that is an amount, not a pathway.
 *
 * @param id of a part on one side it is written system.side.part.kind
 * @param normal its value in the average healthy person; {@code spread} the most by which healthy people differ from it
 */
public record Quantity(
        String id,
        String name,
        String unit,
        double normal,
        double spread,
        double least,
        double most,
        String source,
        String confidence) {

    private static final String RIGHT = ".right.";
    private static final String LEFT = ".left.";

    /** What it is an amount of, wherever in the body: "lung.right.lower-back.solid" is of the family "lung.solid". */
    public static String family(String id) {
        int first = id.indexOf('.');
        int last = id.lastIndexOf('.');
        return first == last ? id : id.substring(0, first) + id.substring(last);
    }

    /** The same quantity on the other side of the body; itself if it has no side. */
    public static String mirrored(String id) {
        return id.contains(RIGHT) ? id.replace(RIGHT, LEFT) : id.replace(LEFT, RIGHT);
    }

    /** The side on which it is an amount. */
    public Side side() {
        return id.contains(RIGHT) ? Side.RIGHT : id.contains(LEFT) ? Side.LEFT : Side.NONE;
    }

    /** The same trait for both sides, so that a mirrored person varies in mirror image. */
    String trait() {
        return id.replace(RIGHT, ".").replace(LEFT, ".");
    }
}
