package org.manubrium.examination;

import java.util.List;

/**
 * The scale on which a sign is read, lowest level first.
 *
 * @param quantity what it grades (reflex, power, feeling …): scales of one quantity are different schools' forms of it
 * @param ordered whether the levels have an order, so that one level off is nearer than two
 */
public record Scale(
        String id,
        String name,
        String quantity,
        boolean ordered,
        List<Level> levels,
        String source,
        String confidence) {

    /** The highest level that the amount reaches. */
    public Level grade(double amount) {
        Level reached = levels.get(0);
        for (Level level : levels) {
            if (amount >= level.atLeast()) {
                reached = level;
            }
        }
        return reached;
    }

    /** The place of a code on the scale, from 0; -1 if it is not one of its codes. */
    public int rank(String code) {
        for (int i = 0; i < levels.size(); i++) {
            if (levels.get(i).code().equals(code)) {
                return i;
            }
        }
        return -1;
    }
}
