package org.manubrium.patient;

/**
 * A part of the body's state that is an amount, not a pathway.
 *
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
        String confidence) {}
