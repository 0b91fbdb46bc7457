package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;

/** What can be read off the drawn sounds of a heart, in a real browser. */
class HeartDrawingTest extends AtTheBoard {
    private static final List<String> ILL = List.of(
            "aortic-stenosis",
            "aortic-sclerosis",
            "mitral-regurgitation",
            "mitral-stenosis",
            "ventricular-septal-defect",
            "pulmonary-stenosis",
            "patent-duct");
    private static final List<String> PLACES = List.of("aortic", "tricuspid", "mitral", "infraclavicular");

    /** How many times the faintest that is heard the tallest of some strokes is, by the numbers on the axis. */
    private static final String TIMES = """
            const strip = [...board.querySelectorAll('.phono svg')][0];
            const numbers = [...strip.querySelectorAll('.tick')].filter((t) => t.textContent.endsWith('×'))
              .map((t) => [Number(t.getAttribute('y')), Number(t.textContent.slice(0, -1))]);
            const [one, ten] = [1, 10].map((n) => numbers.find(([, times]) => times === n)[0]);
            const times = (up) => 10 ** (up / (one - ten));
            const tops = [...strip.querySelectorAll('%s')].filter((path) => path.getAttribute('d')).map((path) => path.getBBox())
              .map((box) => box.height / 2);
            return tops.length ? times(Math.max(...tops)) : 0;
            """;

    private static double noise(Bedside patient, String place, Map<String, String> technique) {
        board.show(patient, "murmur-loudness", List.of("murmur-loudness@" + place), technique);
        return board.number(TIMES.formatted(".hatch"));
    }

    private static double tremble() {
        return board.number("return board.querySelector('.tremble').getBBox().height");
    }

    /** The louder through either chest piece, the stethoscope touching so. */
    private static double best(Bedside patient, String place, String touching) {
        return Stream.of("diaphragm", "bell")
                .mapToDouble(piece -> noise(patient, place, Map.of("heart-piece", piece, "heart-contact", touching)))
                .max()
                .orElseThrow();
    }

    /**
     * As a student grades who looks, tilts and lifts the stethoscope and lays on a hand. Levine 1933: 1 heard after listening
     * for some time, 2 faint, 3 loud, 4 with a thrill, 5 with only the rim on the chest, 6 just off it.
     */
    private static int grade(Bedside patient, String place) {
        if (best(patient, place, "off") > 0) {
            return 6;
        }
        if (best(patient, place, "rim") > 0) {
            return 5;
        }
        double loud = best(patient, place, "flat");
        if (tremble() > 1) {
            return 4;
        }
        return loud >= 6 ? 3 : loud >= 2.5 ? 2 : loud >= 1 ? 1 : 0;
    }

    @Test
    void theGradeOfAMurmurIsThatWhichIsReadOffTheDrawing() {
        TreeSet<Integer> grades = new TreeSet<>();
        for (String condition : ILL) {
            Bedside patient = Bedside.healthy(50).condition(condition, Side.NONE);
            for (String place : PLACES) {
                int read = grade(patient, place);
                grades.add(read);
                assertThat(String.valueOf(read))
                        .as("%s at %s", condition, place)
                        .isEqualTo(patient.word("murmur-loudness@" + place));
            }
        }
        assertThat(grades).hasSizeGreaterThan(4);
    }

    /** The dashed line is what it is said to be: as tall as the first sound of a healthy heart at the apex. */
    @Test
    void aHealthyFirstSoundReachesTheDashedLine() {
        board.show(Bedside.healthy(50), "first-sound", List.of("first-sound"), Map.of());
        double line = board.number(TIMES.formatted(".healthy-first")
                .replace("path.getBBox())", "({ height: 2 * (one - 5 - path.getBBox().y) }))"));

        assertThat(line).isCloseTo(12.6, within(0.3));
        assertThat(board.number(TIMES.formatted(".click"))).isCloseTo(line, within(2.0));
    }

    @Test
    void everythingIsDrawnInOneFormWhoeverIsListenedTo() {
        noise(Bedside.healthy(50), "aortic", Map.of());
        String healthy = parts();
        for (String condition : ILL) {
            noise(Bedside.healthy(50).condition(condition, Side.NONE), "aortic", Map.of());

            assertThat(parts()).as(condition).isEqualTo(healthy);
        }
    }

    /** Strokes are as many as there are beats and sounds; all else is told by the manoeuvre. */
    private static String parts() {
        return board.text("return [...board.querySelectorAll('*:not(.click)')].map(e =>"
                + " e.tagName.toLowerCase() + '.' + (e.getAttribute('class') ?? '')).join(' ')");
    }
}
