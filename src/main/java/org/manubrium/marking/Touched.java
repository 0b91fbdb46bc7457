package org.manubrium.marking;

import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.marking.key.KeyLine;

/**
 * Finds the lines of a key on which an attempt can be marked. A key has many more lines than an attempt touches, and is
 * looked through once for many attempts.
 */
final class Touched {
    private static final BitSet NONE = new BitSet();

    private final List<KeyLine> lines;
    private final BitSet essential = new BitSet();
    private final Map<OfSide, BitSet> ofSide = new HashMap<>();

    Touched(List<KeyLine> lines) {
        this.lines = lines;
        for (int i = 0; i < lines.size(); i++) {
            KeyLine line = lines.get(i);
            essential.set(i, line.necessity().essential());
            ofSide.computeIfAbsent(OfSide.of(line.item()), side -> new BitSet()).set(i);
        }
    }

    /** The essential lines and those of the sides of manoeuvres that were met, in table order. */
    List<KeyLine> lines(Collection<OfSide> met) {
        BitSet found = (BitSet) essential.clone();
        met.forEach(side -> found.or(ofSide.getOrDefault(side, NONE)));
        return found.stream().mapToObj(lines::get).toList();
    }
}
