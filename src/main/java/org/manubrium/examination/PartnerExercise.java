package org.manubrium.examination;

import java.util.List;

/**
 * What a student practises on a partner because a screen does not teach touch.
 *
 * @param signs the kinds of sign, as an appearance names them, that are felt so
 * @param partner how the partner sits or lies
 * @param feel what is met in a healthy partner
 * @param wrong what goes wrong
 * @param cautions ids of cautions
 */
public record PartnerExercise(
        String id,
        String name,
        List<String> signs,
        String partner,
        List<String> steps,
        String feel,
        String wrong,
        List<String> cautions,
        String source,
        String confidence,
        String note) {}
