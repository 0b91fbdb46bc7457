package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.manubrium.examination.Manoeuvre;

/** On a phone the words inside a drawing can still be read. */
class WordsInDrawingsTest {
    private static final int PHONE = 390;
    private static final double LEAST_PX = 10.9;
    private static final Set<String> SYSTEMS = Set.of(
            "heart",
            "chest",
            "abdomen",
            "neck",
            "neck veins",
            "back",
            "skin",
            "approach",
            "arteries",
            "legs",
            "hands",
            "joints",
            "pulse and pressure");

    /** Small words of a drawing: size in CSS pixels and text. */
    private static final String SMALL = """
            return [...board.querySelectorAll('svg text')].filter((t) => t.textContent).map((t) => {
              const k = t.getScreenCTM();
              return [parseFloat(getComputedStyle(t).fontSize) * Math.hypot(k.a, k.b), t.textContent];
            }).filter(([px]) => px < %s).map(([px, text]) => px.toFixed(1) + ' ' + text).slice(0, 3).join('; ');
            """.formatted(LEAST_PX);

    @Test
    void noWordIsSmallerThanElevenPixels() {
        TreeSet<String> small = new TreeSet<>();
        int drawn = 0;
        try (DrawingBoard board = DrawingBoard.narrow(PHONE)) {
            for (Manoeuvre manoeuvre : EverySignDrawnTest.kinds()) {
                if (SYSTEMS.contains(manoeuvre.system())) {
                    board.showAll(Bedside.healthy(45), manoeuvre);
                    String found = board.text(SMALL);
                    drawn++;
                    if (!found.isEmpty()) {
                        small.add(manoeuvre.id() + ": " + found);
                    }
                }
            }
        }
        assertThat(drawn).isGreaterThan(60);
        assertThat(small).isEmpty();
    }
}
