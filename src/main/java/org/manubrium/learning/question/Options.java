package org.manubrium.learning.question;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/** The right answer among wrong ones, in an order drawn by chance. */
record Options(List<String> words, int right) {
    /** How many can be answered, at most. */
    static final int MOST = 4;

    /** @param wrong the most tempting first; repeated ones, and the right one among them, are left out */
    static Options of(String right, List<String> wrong, Random random) {
        Set<String> kept = new LinkedHashSet<>(List.of(right));
        wrong.stream().filter(word -> kept.size() < MOST).forEach(kept::add);
        List<String> shuffled = new ArrayList<>(kept);
        Collections.shuffle(shuffled, random);
        return new Options(List.copyOf(shuffled), shuffled.indexOf(right));
    }

    /** In the order in which they stand on a scale: a scale that is shuffled is no scale. */
    static Options inOrder(String right, List<String> all) {
        return new Options(List.copyOf(all), all.indexOf(right));
    }
}
