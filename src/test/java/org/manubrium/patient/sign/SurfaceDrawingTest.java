package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Side;

/**
 * What a student measures on the drawings of hands, legs, joints and nodes, in a real browser, is what the body shows. Lengths
 * are read against the ruler or the scale that is drawn, angles off the lines; the tolerances stand beside each check.
 */
class SurfaceDrawingTest extends AtTheBoard {
    /** Pixels of a drawing between the first two numbers of its ruler, which are a centimetre apart. */
    private static final String CENTIMETRE = "const numbers = [...svg.querySelectorAll('.ruler .tick')];"
            + "const middle = (t) => { const b = t.getBoundingClientRect(); return [b.left + b.width / 2, b.top + b.height / 2]; };"
            + "const [zero, one] = numbers.map(middle);"
            + "const cm = Math.hypot(one[0] - zero[0], one[1] - zero[1]);";

    /** The dent at the moment the thumb is lifted, by the ruler beside it: within 0.3 mm, and the reading's half millimetre. */
    @ParameterizedTest
    @ValueSource(strings = {"healthy", "nephrotic-syndrome", "right-heart-failure", "lymphoedema"})
    void dentByTheRulerIsAsDeepAsTheBodySays(String condition) {
        Bedside healthy = Bedside.healthy(58);
        Bedside patient = condition.equals("healthy") ? healthy : healthy.condition(condition, Side.LEFT);
        board.show(patient, "oedema-depth", List.of("oedema-depth:left@ankle"), Map.of());

        double drawn = board.number("const svg = board.querySelector('svg.look');" + CENTIMETRE + """
                const skin = svg.querySelector('path.limb-edge');
                const at = (l) => skin.getPointAtLength(l).matrixTransform(skin.getScreenCTM()).y;
                const all = Array.from({ length: 400 }, (_, i) => at(skin.getTotalLength() * i / 399));
                return (Math.max(...all) - all[0]) / cm * 10;
                """);
        assertThat(drawn).isCloseTo(patient.amount("oedema-depth:left@ankle"), within(0.3 + 0.25));
    }

    /** Pressed on both sides, both are drawn, right before left, each as deep as its own. */
    @Test
    void bothLegsStandBesideEachOther() {
        Bedside patient = Bedside.healthy(58).condition("deep-vein-thrombosis", Side.LEFT);
        board.show(patient, "oedema-depth", List.of("oedema-depth:right@ankle", "oedema-depth:left@ankle"), Map.of());

        assertThat(board.text("return [...board.querySelectorAll('.act-side')].map((b) => b.textContent).join()"))
                .isEqualTo("right,left");
        String height =
                "return board.querySelectorAll('svg.look')[%d].querySelector('path.limb-edge').getBBox().height";
        assertThat(board.number(height.formatted(1))).isGreaterThan(board.number(height.formatted(0)));
    }

    /** All but a twentieth of the colour is back after the time that is read: by the stop-watch within 0.15 s. */
    @ParameterizedTest
    @CsvSource({"0", "0.4", "0.8"})
    void colourIsBackOnTheTraceWhenTheBodySays(double narrowed) {
        Bedside patient = Bedside.healthy(40).shift("artery.left.subclavian.narrow", narrowed);
        board.show(patient, "finger-refill", List.of("finger-refill:left"), Map.of());

        double drawn = board.number("""
                const box = board.querySelector('.trace-box');
                const all = box.querySelector('.curve').getAttribute('d').slice(1).split('L').map((p) => p.split(' ').map(Number));
                const numbers = [...box.querySelectorAll('svg .tick[text-anchor=end]')].filter((t) => Number(t.getAttribute('x')) < 60)
                  .map((t) => [Number(t.getAttribute('y')) - 4, Number(t.textContent)]);
                const [low, high] = [numbers[0], numbers.at(-1)];
                const percent = (y) => low[1] + (y - low[0]) / (high[0] - low[0]) * (high[1] - low[1]);
                const after = all.findIndex(([, y]) => percent(y) >= 95);
                const [a, b] = [all[after - 1], all[after]];
                const x = a[0] + (95 - percent(a[1])) / (percent(b[1]) - percent(a[1])) * (b[0] - a[0]);
                return (x - all[0][0]) / (all.at(-1)[0] - all[0][0]) * Number(box.querySelector('input.watch').max) / 1000;
                """);
        assertThat(drawn).isCloseTo(patient.amount("finger-refill:left"), within(0.15));
    }

    /** The lump under the finger by the ruler beneath it: within 0.5 mm, and the reading's half millimetre. */
    @ParameterizedTest
    @ValueSource(doubles = {8, 15, 32})
    void nodeIsAsWideAsTheBodySays(double mm) {
        Bedside patient = Bedside.healthy(40).shift("node.left.submandibular.size", mm);
        board.show(patient, "neck-node-size", List.of("neck-node-size:left@submandibular"), Map.of());

        double drawn = board.number("const svg = board.querySelector('svg.marks');" + CENTIMETRE
                + "return svg.querySelector('path.band:not(.faint)').getBoundingClientRect().width / cm * 10;");
        assertThat(drawn).isCloseTo(patient.amount("neck-node-size:left@submandibular"), within(1.5));
    }

    /**
     * Fluid in a knee: a little bulges into the hollow, much is too tight for that and lifts the kneecap off the bone instead
     * (from memory; teaching texts). The hollow is read off its outline, three units a millimetre, within 0.3 mm.
     */
    @ParameterizedTest
    @CsvSource({"0,false,false", "20,true,false", "50,true,true", "120,false,true"})
    void fluidOfAKneeBulgesOrTaps(double ml, boolean bulges, boolean taps) {
        Bedside patient = Bedside.healthy(40).shift("joint.left.knee.fluid", ml);
        board.draw(patient, "knee-bulge", List.of("knee-bulge:left"), true);
        double[] edges = new double[2];
        for (int still = 0; still < 2; still++) {
            edges[still] = board.number("const skin = board.querySelectorAll('svg.look')[" + still
                    + "].querySelectorAll('path.limb-edge')[1];"
                    + "return Number(/ ([\\d.]+) 90C/.exec(skin.getAttribute('d'))[1]);");
        }
        double top =
                patient
                        .curve(
                                "knee-bulge:left",
                                patient.show("knee-bulge:left", Map.of())
                                        .curves()
                                        .get(0)
                                        .name())
                        .stream()
                        .mapToDouble(x -> x)
                        .max()
                        .orElseThrow();

        assertThat(edges[1]).isCloseTo(70 - top * 3, within(0.9));
        assertThat(edges[0] - edges[1] > 3).isEqualTo(bulges);
        assertThat(patient.word("knee-bulge:left").equals("bulges")).isEqualTo(bulges);

        board.draw(patient, "kneecap-tap", List.of("kneecap-tap:left"), true);
        String cap = "return Number(board.querySelectorAll('svg.look rect')[%d].getAttribute('y'))";
        assertThat(board.number(cap.formatted(1)) - board.number(cap.formatted(0)) > 4)
                .isEqualTo(taps);
        assertThat(board.text("return [...board.querySelectorAll('.act-still .quiet')].map((one) => one.textContent)"
                        + ".join(' ')"))
                .isEqualTo("0 ms 400 ms");
    }

    /** The angle between the two lines at the fold of the nail: within a degree and a half. */
    @ParameterizedTest
    @ValueSource(strings = {"healthy", "cyanotic-heart-disease", "pulmonary-fibrosis"})
    void angleOfTheNailIsThatOfTheBody(String condition) {
        Bedside healthy = Bedside.healthy(50);
        Bedside patient = condition.equals("healthy") ? healthy : healthy.condition(condition, Side.NONE);
        board.show(patient, "nail-profile", List.of("nail-profile"), Map.of());

        double drawn = board.number("""
                const [nail, skin] = [...board.querySelectorAll('path.mark')].map((p) => {
                  const [a, b] = [p.getPointAtLength(0), p.getPointAtLength(p.getTotalLength())];
                  return Math.atan2(a.y - b.y, b.x - a.x) * 180 / Math.PI;
                });
                return 180 + nail;
                """);
        assertThat(drawn).isCloseTo(patient.amount("nail-profile"), within(1.5));
    }

    /** A nail that is hollow dips below its edges in the cut across it, and one that is not does not. */
    @Test
    void spoonNailIsHollowInTheCutAcross() {
        String dip =
                "const cut = [...board.querySelectorAll('path.mark')].at(-1).getBBox(); return cut.y + cut.height - 100";
        board.show(Bedside.healthy(40), "nails", List.of("nails"), Map.of());
        double healthy = board.number(dip);
        board.show(Bedside.healthy(40).condition("iron-deficiency", Side.NONE), "nails", List.of("nails"), Map.of());

        assertThat(healthy).isLessThanOrEqualTo(0.5);
        assertThat(board.number(dip)).isGreaterThan(1);
    }

    /** At one height a trunk grows with the weight, and the figure is as tall as its height by the rod. */
    @Test
    void figureOnTheScalesHasTheBuildOfItsWeight() {
        Bedside usual = Bedside.healthy(50);
        double[] lean = figure(usual.condition("malnutrition", Side.NONE));
        double[] health = figure(usual);
        double[] heavy = figure(usual.condition("obesity", Side.NONE));

        assertThat(heavy[0] / health[0]).isCloseTo(heavy[2] / health[2], within(0.1));
        assertThat(lean[0] / health[0]).isCloseTo(lean[2] / health[2], within(0.1));
        assertThat(heavy[0]).isGreaterThan(1.3 * health[0]);
        assertThat(lean[0]).isLessThan(0.9 * health[0]);
        for (double[] one : List.of(lean, health, heavy)) {
            assertThat(one[1] / 1.1).isCloseTo(one[3], within(0.6));
        }
    }

    /** Width of the waist and height as drawn, weight in kg and height in cm as shown. */
    private static double[] figure(Bedside patient) {
        board.show(patient, "weight-for-height", List.of("weight-for-height"), Map.of());
        var measures = patient.show("weight-for-height", Map.of()).measures();
        double waist = board.number(
                "const p = board.querySelector('.trunk'); const box = board.querySelector('.stands').getBBox();"
                        + " const y = 218 - 0.62 * 1.1 * " + measures.get(0).amount() + ";"
                        + " const x = Array.from({ length: 2000 }, (_, i) => p.getPointAtLength(p.getTotalLength() * i / 1999))"
                        + ".filter((at) => Math.abs(at.y - y) < 1.5).map((at) => at.x); return Math.max(...x) - Math.min(...x)");
        double tall = board.number("return board.querySelector('.stands').getBBox().height");
        return new double[] {
            waist, tall, measures.get(1).amount(), measures.get(0).amount()
        };
    }

    /** The full mark lies where here is, the open one where beside it is; jaundice lies towards yellow, want of blood is pale. */
    @Test
    void marksOnThePrintedColoursLieWhereTheColoursAre() {
        Bedside healthy = Bedside.healthy(50);

        assertThat(marks(healthy, "face-colour")[2]).isCloseTo(0, within(0.01));
        assertThat(marks(healthy.condition("bile-duct-blockage", Side.NONE), "eye-white-colour")[2])
                .isGreaterThan(0.1);
        assertThat(marks(healthy.condition("iron-deficiency", Side.NONE), "lid-colour")[1])
                .isLessThan(-0.05);
    }

    /** By how much of its row the mark of here lies beyond that of beside: lightness, red, yellow. */
    private static double[] marks(Bedside patient, String manoeuvre) {
        board.show(patient, manoeuvre, List.of(manoeuvre), Map.of());
        double[] found = new double[3];
        for (int row = 0; row < 3; row++) {
            found[row] = board.number(
                    "const tip = (name) => Number(board.querySelectorAll(name)[" + row
                            + "].getAttribute('d').slice(1).split(' ')[0]); return (tip('.here-mark') - tip('.beside-mark')) / 300");
        }
        String said = board.text("return board.textContent");
        assertThat(said).contains("lightness", "beside").doesNotContain("of the light", "waves");
        return found;
    }
}
