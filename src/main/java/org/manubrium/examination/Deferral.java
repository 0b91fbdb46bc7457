package org.manubrium.examination;

/**
 * A reason for putting off an intimate examination.
 *
 * @param question what must have been asked before the reason can be given; blank if nothing
 * @param essential whether it is a reason even where the case turns on the examination
 */
public record Deferral(String id, String name, String question, boolean essential, String source, String confidence) {}
