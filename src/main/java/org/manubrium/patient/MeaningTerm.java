package org.manubrium.patient;

/**
 * A term in which findings are explained, and what earns it.
 *
 * @param strand the strand of a sign's pathways, or the quantity or family of quantities, that must be hurt; "more" or
 *     "less" before a quantity asks for the way in which it is moved
 * @param divisions the divisions in which the lesion may lie, separated by |; blank for any
 * @param direction "more" or "less" where the way matters, else blank
 */
public record MeaningTerm(
        String id, String name, String strand, String divisions, String direction, String source, String confidence) {}
