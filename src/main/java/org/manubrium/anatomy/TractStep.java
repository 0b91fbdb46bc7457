package org.manubrium.anatomy;

/**
 * One row of a tract: a structure passed on the way between the brain and a segment. Rows of one step with different
 * branch letters run in parallel, rows of one branch in series.
 *
 * @param segments the segments passed, told from the level served, as "C1..@" or "@-1"; blank if the structure has none
 * @param level the named level passed; "@area" for the part of the body served
 */
public record TractStep(
        String tract,
        int step,
        String branch,
        double weight,
        String structure,
        Relation side,
        String segments,
        String level,
        String source,
        String confidence) {}
