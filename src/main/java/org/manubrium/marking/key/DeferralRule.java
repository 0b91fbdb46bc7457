package org.manubrium.marking.key;

/**
 * When a reason for putting off an intimate manoeuvre is sound.
 *
 * @param name the reason in words
 * @param question what must have been asked before; blank if nothing
 * @param essential whether it is a reason even where the case turns on the manoeuvre
 */
public record DeferralRule(String id, String name, String question, boolean essential) {}
