package org.manubrium.patient;

/**
 * One part of a whole of which a quantity exists part by part, as a lobe lies under several zones of the chest.
 *
 * @param whole what stands before the last dot of a quantity that is said of the whole
 * @param part what stands there in the quantity of the part
 * @param share how much of what befalls the whole befalls this part, 0..1
 */
public record QuantityPart(String whole, String part, double share, String source, String confidence) {}
