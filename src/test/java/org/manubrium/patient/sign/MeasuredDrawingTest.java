package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Side;

/** What a student measures on the drawing, in a real browser, is what the body shows. */
class MeasuredDrawingTest extends AtTheBoard {
    /** The points of a drawn curve as [x, y]. */
    private static final String POINTS =
            "const points = (path) => path.getAttribute('d').slice(1).split('L').map(p => p.split(' ').map(Number));";

    /** Milliseconds at a place across a trace, from the ends of the curve and the reach of its stop-watch. */
    private static final String TIME = POINTS
            + "const box = board.querySelector('.trace-box'); const curve = box.querySelector('.curve');"
            + "const all = points(curve); const [first, last] = [all[0][0], all.at(-1)[0]];"
            + "const time = (x) => (x - first) / (last - first) * Number(box.querySelector('input.watch').max);";

    /** Heights on a trace from the numbers beside it. */
    private static final String HEIGHT = "const numbers = [...box.querySelectorAll('svg .tick[text-anchor=end]')]"
            + ".filter(t => Number(t.getAttribute('x')) < 60).map(t => [Number(t.getAttribute('y')) - 4, Number(t.textContent)]);"
            + "const [low, high] = [numbers[0], numbers.at(-1)];"
            + "const height = (y) => low[1] + (y - low[0]) / (high[0] - low[0]) * (high[1] - low[1]);";

    @Test
    void whatLiesLowerThanTheSternalAngleIsSaidToLieBelowIt() {
        Bedside patient = Bedside.healthy(45).condition("blood-loss", Side.NONE);
        String said = board.show(patient, "neck-vein-wave", List.of("neck-vein-wave"), Map.of());

        for (String text : List.of(said, board.text("return board.querySelector('.shown-side').textContent"))) {
            assertThat(text)
                    .containsPattern("clavicle [0-9.]+ cm below the sternal angle")
                    .doesNotContain("\u2212", "-");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"healthy", "underactive-thyroid", "overactive-thyroid"})
    void halfRelaxationMeasuredOnTheTraceIsThatOfTheBody(String condition) {
        Bedside healthy = Bedside.healthy(45);
        Bedside patient = condition.equals("healthy") ? healthy : healthy.condition(condition, Side.NONE);
        board.show(patient, "ankle-relaxation", List.of("ankle-relaxation:left"), Map.of());

        double drawn = board.number(TIME + """
                const top = all.reduce((a, p) => (p[1] < a[1] ? p : a));
                const half = (top[1] + all[0][1]) / 2;
                const after = all.findIndex((p) => p[0] > top[0] && p[1] >= half);
                const [a, b] = [all[after - 1], all[after]];
                return time(a[0] + (half - a[1]) / (b[1] - a[1]) * (b[0] - a[0]));
                """);
        assertThat(drawn).isCloseTo(patient.amount("ankle-relaxation:left"), within(5.0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {11, 14, 17})
    void theRulerOnTheNeckGivesTheHeightOfTheColumn(double pressure) {
        Bedside healthy = Bedside.healthy(60);
        Bedside patient = healthy.shift("right-atrial-pressure", pressure - 5);
        board.show(patient, "neck-vein-height", List.of("neck-vein-height"), Map.of());

        double drawn = board.number("""
                const svg = board.querySelector('svg.neck'); const vein = svg.querySelector('.vein');
                const numbers = [...svg.querySelectorAll('.tick')].filter((t) => /^\\d+$/.test(t.textContent));
                const at = (n) => numbers.find((t) => t.textContent === String(n)).getBoundingClientRect();
                const middle = (box) => box.top + box.height / 2;
                const [zero, ten] = [middle(at(0)), middle(at(10))];
                const range = board.querySelector('.trace-box input.watch');
                const heights = [];
                for (let i = 0; i <= 400; i++) {
                  range.value = Number(range.max) * i / 400;
                  range.dispatchEvent(new Event('input'));
                  if (!vein.getAttribute('d')) continue;
                  const top = vein.getPointAtLength(vein.getTotalLength()).matrixTransform(vein.getScreenCTM());
                  heights.push((zero - top.y) / (zero - ten) * 10);
                }
                return heights.reduce((a, b) => a + b, 0) / heights.length;
                """);
        assertThat(drawn).isCloseTo(patient.amount("neck-vein-height"), within(0.2));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, 0, 60})
    void theFirstAndTheLastSoundLieAtTheTwoPressures(double higher) {
        Bedside patient = Bedside.healthy(60).shift("systolic-lying", higher).shift("diastolic-lying", higher / 2);
        board.show(patient, "pressure-lying", List.of("pressure-lying@systolic"), Map.of());
        String pressure = TIME + HEIGHT + """
                const sounds = [...box.querySelectorAll('.sound')].map((s) => Number(/^M([\\d.]+)/.exec(s.getAttribute('d'))[1]));
                const at = (x) => { const i = all.findIndex((p) => p[0] >= x); return height(all[i][1]); };
                return at(sounds.at(%d));
                """;

        assertThat(board.number(pressure.formatted(0)))
                .isCloseTo(patient.amount("pressure-lying@systolic"), within(2.0));
        assertThat(board.number(pressure.formatted(-1)))
                .isCloseTo(patient.amount("pressure-lying@diastolic"), within(2.0));
    }

    /** Each tick is narrower than the space to the next, so that sounds can be counted on a phone too. */
    @Test
    void theTicksOfTheSoundsStandApart() {
        try (DrawingBoard phone = DrawingBoard.narrow(390)) {
            phone.show(
                    Bedside.healthy(60).shift("heart-rate", 60),
                    "pressure-lying",
                    List.of("pressure-lying@systolic"),
                    Map.of());

            assertThat(phone.number("""
                    const sounds = [...board.querySelectorAll('.sound')].map((s) => ({
                      x: Number(/^M([\\d.]+)/.exec(s.getAttribute('d'))[1]), wide: parseFloat(getComputedStyle(s).strokeWidth) }));
                    return Math.min(...sounds.slice(1).map((s, i) => (s.x - sounds[i].x) / s.wide));
                    """)).isGreaterThan(2);
        }
    }

    /**
     * Afferent defect: the pupils are equal in every light, since each takes the mean of both eyes; swinging the torch to
     * the eye that sees less lets both widen (Bell, Waggoner, Boyd et al. 1993, and teaching texts on the swinging test).
     */
    @Test
    void withAnAfferentDefectThePupilsAreEqualInEveryLightAndWidenOnSwingingToTheBadEye() {
        Bedside patient = Bedside.healthy(35).condition("optic-neuritis", Side.LEFT);
        for (String light : List.of("even", "dim", "bright")) {
            board.show(patient, "pupil-size-light", List.of("pupil-size-light:left"), Map.of("pupil-light", light));
            assertThat(width(0)).as(light).isCloseTo(width(1), within(0.05));
        }
        double direct = fall(patient, "pupil-light-direct:left", 1);
        double consensual = fall(patient, "pupil-light-consensual:left", 1);

        assertThat(direct).isLessThan(0.95 * consensual);
        assertThat(fall(patient, "pupil-light-direct:right", 0)).isGreaterThan(direct);
    }

    /** Widths of the drawn pupils in millimetres on the gauge below them; the patient's right eye first. */
    private static double width(int eye) {
        return board.number(WIDTH + "return width(" + eye + ");");
    }

    private static final String WIDTH = """
            const eyes = [...board.querySelectorAll('svg.eyes > g')];
            const width = (eye) => {
              const number = (n) => Number([...eyes[eye].querySelectorAll('.tick')].find((t) => t.textContent === String(n)).getAttribute('x'));
              return 2 * Number(eyes[eye].querySelector('.pupil').getAttribute('r')) / ((number(8) - number(0)) / 8);
            };
            """;

    /** By how much a drawn pupil narrows at most, mm. */
    private static double fall(Bedside patient, String item, int eye) {
        board.show(patient, Bedside.item(item).manoeuvre(), List.of(item), Map.of());
        return board.number(WIDTH + """
                const range = board.querySelector('.trace-box input.watch');
                const widths = [];
                for (let i = 0; i <= 200; i++) {
                  range.value = Number(range.max) * i / 200;
                  range.dispatchEvent(new Event('input'));
                  widths.push(width(%d));
                }
                return widths[0] - Math.min(...widths);
                """.formatted(eye));
    }
}
