package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Reading;
import org.manubrium.patient.Variation;
import org.manubrium.patient.sign.DrawingBoard.Drawn;

/** What is drawn of limbs, standing and walking is what was shown, measured on the drawing in a real browser. */
class LimbDrawingTest extends AtTheBoard {
    /** Units of the drawing for a centimetre: walking figure, prints, held hands, plan of the sway, skin per millimetre. */
    private static final double FIGURE = 1.3;

    private static final double PRINTS = 1.42;
    private static final double HELD = 4;
    private static final double PLAN = 3;
    private static final double SKIN_MM = 2.2;

    private static Bedside healthy() {
        return Bedside.person(50, Variation.of(12));
    }

    private static Bedside with(String condition, Side side) {
        return healthy().condition(condition, side);
    }

    private static double measure(Bedside patient, String item, int which) {
        return patient.show(item, Map.of()).measures().get(which).amount();
    }

    /** Draws so that it can be moved by hand, not as stills. */
    private static String draw(Bedside patient, String manoeuvre) {
        List<String> items = Examination.items(Bedside.manoeuvre(manoeuvre)).stream()
                .map(Item::toString)
                .toList();
        return board.draw(patient, manoeuvre, items, false);
    }

    /** Moves the drawing to a moment, as a finger on its slider or its stop-watch does. */
    private static void at(double ms) {
        board.read("const slider = board.querySelector('input.watch'); slider.value = %s;".formatted(ms)
                + " slider.dispatchEvent(new Event('input')); return 1;");
    }

    private static double number(String script) {
        return board.number("const points = (path) => path.getAttribute('d').slice(1).split('L')"
                + ".map((pair) => pair.trim().split(' ').map(Number));"
                + "const shift = (node) => /translate\\(([-0-9.]+) ([-0-9.]+)\\)/.exec(node.getAttribute('transform'))"
                + ".slice(1).map(Number); " + script);
    }

    /** The points of the trace with this number in time and height, read off its axes. */
    private static List<double[]> trace(int which, String side) {
        Object read = board.read("""
                const svg = board.querySelectorAll('svg.trace')[%d];
                const numbers = [...svg.querySelectorAll('text.tick')].map((text) => ({
                  x: Number(text.getAttribute('x')), y: Number(text.getAttribute('y')), end: text.getAttribute('text-anchor'),
                  text: Number(text.textContent.replace('\\u2212', '-')) })).filter((one) => !Number.isNaN(one.text));
                const foot = Math.max(...numbers.map((one) => one.y));
                const across = numbers.filter((one) => one.y === foot && one.end === 'middle');
                const up = numbers.filter((one) => one.end === 'end').map((one) => ({ ...one, y: one.y - 4 }));
                const line = (ticks, from) => (at) => ticks[0].text + (at - ticks[0][from]) * (ticks.at(-1).text - ticks[0].text) / (ticks.at(-1)[from] - ticks[0][from]);
                const [time, height] = [line(across, 'x'), line(up, 'y')];
                return svg.querySelector('.curve.%s').getAttribute('d').slice(1).split('L').map((pair) => {
                  const [x, y] = pair.trim().split(' ').map(Number); return [time(x), height(y)]; });
                """.formatted(which, side));
        List<double[]> points = new ArrayList<>();
        for (Object pair : (List<?>) read) {
            List<?> two = (List<?>) pair;
            points.add(new double[] {((Number) two.get(0)).doubleValue(), ((Number) two.get(1)).doubleValue()});
        }
        return points;
    }

    private static List<Double> tops(List<double[]> points, double least) {
        List<Double> found = new ArrayList<>();
        for (int i = 1; i < points.size() - 1; i++) {
            double here = points.get(i)[1];
            if (here > least && here > points.get(i - 1)[1] && here >= points.get(i + 1)[1]) {
                found.add(here);
            }
        }
        return found;
    }

    private static double mean(List<Double> numbers) {
        return numbers.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    @Test
    void feetComeDownAsFarApartAsTheStepAndTheBaseThatAreShown() {
        for (Bedside patient : List.of(
                healthy(),
                with("parkinsons-disease", Side.RIGHT),
                with("hereditary-spastic-legs", Side.NONE),
                with("normal-pressure-hydrocephalus", Side.NONE))) {
            draw(patient, "gait");
            for (int i = 1; i < 5; i++) {
                String two = "const [a, b] = [%d, %d].map((i) => shift(board.querySelectorAll('.print')[i])); "
                        .formatted(i - 1, i);
                assertThat(number(two + "return b[0] - a[0]") / PRINTS)
                        .isCloseTo(measure(patient, "gait", 0), within(1.5));
                assertThat(Math.abs(number(two + "return b[1] - a[1]")) / PRINTS)
                        .isCloseTo(measure(patient, "gait", 1), within(0.5));
            }
        }
    }

    @Test
    void theWalkingFigureItselfStandsAStepApartWhenAHeelComesDown() {
        Bedside patient = healthy();
        draw(patient, "gait");
        at(0);
        double apart = number("const ends = [...board.querySelectorAll('.walk-aside .flesh-edge[stroke-width=\"16\"]')]"
                + ".map((leg) => points(leg).at(-1)[0]); return Math.abs(ends[0] - ends[1])");

        assertThat(apart / FIGURE).isCloseTo(measure(patient, "gait", 0), within(3.0));
    }

    /** Degrees through which an upper arm of the figure swings, read off the drawn arm. */
    private static double swing(String side) {
        return number("""
                const slider = board.querySelector('input.watch');
                const angles = [];
                for (let ms = 0; ms <= 1000; ms += 25) {
                  slider.value = ms;
                  slider.dispatchEvent(new Event('input'));
                  const arms = [...board.querySelectorAll('.walk-aside .flesh-edge[stroke-width="11"]')];
                  const [a, b] = points(arms.find((arm) => arm.classList.contains('far') === %s));
                  angles.push(Math.atan2(b[0] - a[0], b[1] - a[1]) * 180 / Math.PI);
                }
                return Math.max(...angles) - Math.min(...angles);
                """.formatted(side.equals("left")));
    }

    /** Rao 2003, JAMA 289:347 (abstract): reduced arm swing, asymmetric at first. */
    @Test
    void theArmOfTheNamedSideSwingsLeastInParkinsonsDisease() {
        draw(healthy(), "gait");
        assertThat(swing("right")).isCloseTo(36, within(2.0));
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            draw(with("parkinsons-disease", side), "gait");
            assertThat(swing(side.word())).isLessThan(6);
            assertThat(swing(side.opposite().word())).isGreaterThan(swing(side.word()) + 8);
        }
    }

    /** Rao 2003: in an early loss on one side the arm hangs still before the steps shorten. */
    @Test
    void anEarlyLossStillsOneArmAndLeavesTheSteps() {
        Bedside patient = healthy().lesion("substantia nigra left", 0.45, "1 year");
        draw(patient, "gait");

        assertThat(swing("right")).isLessThan(6);
        assertThat(swing("left")).isGreaterThan(25);
        assertThat(measure(patient, "gait", 0)).isGreaterThan(55);
    }

    /** Merritt's Neurology Handbook, 2nd ed., ch. 11: the arm is bent in a stroke; a cord below it spares the arm. */
    @Test
    void theArmIsBentWhereTheLesionLiesAboveItAndFreeWhereBelow() {
        draw(healthy().lesion("internal capsule right", 0.6, "1 year"), "gait");
        double stroke = swing("left");
        draw(healthy().lesion("spinal cord T8 left half", 0.7, "1 year"), "gait");

        assertThat(stroke).isLessThan(8);
        assertThat(swing("left")).isGreaterThan(30);
    }

    @Test
    void theHandSinksByTheShownCentimetresAndTurnsByTheShownDegrees() {
        Bedside patient = with("slight-capsular-stroke", Side.RIGHT);
        draw(patient, "pronator-drift");
        at(20_000);
        String hand = "const hand = board.querySelectorAll('.end-on')[%d]; ";
        double left = number(hand.formatted(1) + "return shift(hand)[1]");
        double right = number(hand.formatted(0) + "return shift(hand)[1]");
        double turned = number(hand.formatted(1)
                + "return -Number(/rotate\\(([-0-9.]+)\\)$/.exec(hand.getAttribute('transform'))[1])");

        assertThat((left - right) / HELD).isCloseTo(measure(patient, "pronator-drift:left", 0), within(0.5));
        assertThat(turned).isCloseTo(measure(patient, "pronator-drift:left", 1), within(0.5));
    }

    /** Daum & Aybek 2013, BMC Neurol 13:31: drift without pronation. */
    @Test
    void aFunctionalArmSinksWithItsPalmUp() {
        draw(with("functional-arm-weakness", Side.LEFT), "pronator-drift");
        at(20_000);
        String hand = "const hand = board.querySelectorAll('.end-on')[1]; ";

        assertThat(number(hand + "return shift(hand)[1] - shift(board.querySelectorAll('.end-on')[0])[1]") / HELD)
                .isGreaterThan(5);
        assertThat(number(hand
                        + "return Math.abs(Number(/rotate\\(([-0-9.]+)\\)$/.exec(hand.getAttribute('transform'))[1]))"))
                .isLessThan(6);
    }

    /** Rao 2003: movements slow and get smaller. */
    @Test
    void theTraceOfTappingShowsTheRateAndTheDecrement() {
        draw(healthy(), "finger-tapping");
        List<Double> even = tops(trace(0, "right"), 0.3);
        draw(with("parkinsons-disease", Side.RIGHT), "finger-tapping");
        List<Double> falling = tops(trace(0, "right"), 0.3);

        assertThat((double) even.size()).isCloseTo(40, within(1.0));
        assertThat(mean(even.subList(37, even.size()))).isCloseTo(mean(even.subList(0, 3)), within(0.5));
        assertThat((double) falling.size()).isCloseTo(24, within(2.0));
        assertThat(mean(falling.subList(falling.size() - 3, falling.size())))
                .isLessThan(mean(falling.subList(0, 3)) / 2);
    }

    /** Ramanathan 2022 and a chapter on tone (secondary): the catch comes on quick movement only; rigidity is alike. */
    @Test
    void theCatchLiesAtOneAngleOfTheQuickMovementOnly() {
        draw(with("old-capsular-stroke", Side.RIGHT), "tone-elbow");
        double[] quick = strongest(1, "left");
        double[] slow = strongest(1, "right");
        double late = resistanceAt(1, "left", 0.75);
        draw(with("parkinsons-disease", Side.RIGHT), "tone-elbow");
        double[] rigid = strongest(1, "left");

        assertThat(quick[0]).isBetween(25.0, 50.0);
        assertThat(quick[1]).isGreaterThan(4 * slow[1]);
        assertThat(late).isLessThan(quick[1] / 10);
        assertThat(rigid[1]).isCloseTo(strongest(1, "right")[1], within(4.0));
    }

    private static final String PLOT = """
            const svg = board.querySelectorAll('svg.over-angle')[%d];
            const degrees = [...svg.querySelectorAll('text.tick')].filter((one) => one.textContent.endsWith('\\u00b0'))
              .map((one) => [Number(one.getAttribute('x')), parseFloat(one.textContent)]);
            const newton = [...svg.querySelectorAll('text.tick')].filter((one) => one.getAttribute('text-anchor') === 'end')
              .map((one) => [Number(one.getAttribute('y')) - 4, Number(one.textContent)]);
            const line = (ticks) => (at) => ticks[0][1] + (at - ticks[0][0]) * (ticks.at(-1)[1] - ticks[0][1]) / (ticks.at(-1)[0] - ticks[0][0]);
            const all = points(svg.querySelector('.curve.%s')).map(([x, y]) => [line(degrees)(x), line(newton)(y)]);
            """;

    private static double[] strongest(int plot, String which) {
        String best = PLOT.formatted(plot, which) + "return all.reduce((a, b) => (b[1] > a[1] ? b : a))[%d]";
        return new double[] {number(best.formatted(0)), number(best.formatted(1))};
    }

    private static double resistanceAt(int plot, String which, double part) {
        return number(PLOT.formatted(plot, which)
                + "const end = Math.max(...all.map(([x]) => x)); return all.find(([x]) => x >= end * %s)[1]"
                        .formatted(part));
    }

    /** Secondary text: 4-6 Hz at rest in Parkinson's disease; Bhatia 2018 as tabulated: essential 4-12 Hz. */
    @Test
    void theTremorIsCountedOnItsTrace() {
        draw(with("parkinsons-disease", Side.RIGHT), "tremor-at-rest");
        assertThat(hertz(trace(0, "right"))).isBetween(4.0, 6.0);
        assertThat(hertz(trace(0, "right")))
                .isCloseTo(Bedside.REFERENCE.physiology().constant("limb.tremor.slow-coarse.hertz"), within(0.3));
        draw(with("essential-tremor", Side.NONE), "tremor-held");
        assertThat(hertz(trace(0, "right"))).isBetween(4.0, 12.0);
    }

    private static double hertz(List<double[]> points) {
        int ups = 0;
        double first = 0;
        double last = 0;
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i - 1)[1] <= 0 && points.get(i)[1] > 0) {
                first = ups == 0 ? points.get(i)[0] : first;
                last = points.get(i)[0];
                ups++;
            }
        }
        return (ups - 1) / (last - first);
    }

    /** X45: BMJ 1965;1:158. What is read off the drawn trace is the time that is marked. */
    @Test
    void halfRelaxationIsReadOffTheDrawnTraceWithinFiveMilliseconds() {
        for (double thyroid : List.of(-0.8, 0.0, 0.8)) {
            Bedside patient = healthy().shift("thyroid-state", thyroid);
            draw(patient, "ankle-relaxation");
            List<double[]> points = trace(0, "right");
            int top = 0;
            for (int i = 0; i < points.size(); i++) {
                top = points.get(i)[1] > points.get(top)[1] ? i : top;
            }
            double half = points.get(top)[1] / 2;
            int after = top;
            while (points.get(after)[1] > half) {
                after++;
            }
            double marked = ((Reading.Amount)
                            patient.sign("ankle-relaxation:right", Map.of()).reading())
                    .value();

            double[] above = points.get(after - 1);
            double[] below = points.get(after);
            double read = above[0] + (below[0] - above[0]) * (above[1] - half) / (above[1] - below[1]);

            assertThat(read).isCloseTo(marked, within(5.0));
        }
    }

    /** Merritt's Neurology Handbook: steady with open eyes, falling with shut ones when position sense is lost. */
    @Test
    void theSwayIsMeasuredOnThePlan() {
        Bedside patient = with("posterior-cord", Side.NONE);
        draw(patient, "romberg");
        at(20_000);
        String widest = "const all = points(board.querySelectorAll('.plan .trail')[%d]);"
                + " return Math.max(...all.map(([x]) => Math.abs(x - 75)))";

        assertThat(number(widest.formatted(0)) / PLAN).isCloseTo(measure(patient, "romberg", 0), within(0.3));
        assertThat(number(widest.formatted(1)) / PLAN).isCloseTo(measure(patient, "romberg", 1), within(0.3));
    }

    /** McWhirter 2011, J Psychosom Res 71:384: pressure comes back while the other leg is lifted. */
    @Test
    void theForceUnderAFunctionalHeelComesBackWithTheOtherLeg() {
        draw(with("functional-leg-weakness", Side.LEFT), "hoover");
        at(3000);
        List<Double> left = new ArrayList<>();
        for (int i = 2; i < 4; i++) {
            left.add(number(
                    "const [from, to] = [0, 1]; return board.querySelectorAll('.heels .force')[%d].getBBox().width"
                            .formatted(i)));
        }

        assertThat(left.get(1)).isGreaterThan(3 * left.get(0));
    }

    @Test
    void theNavelIsDrawnTowardsTheStrokeByTheShownMillimetres() {
        Bedside patient = healthy();
        draw(patient, "abdominal-upper");
        at(450);
        double moved = number(
                "const dots = [...board.querySelectorAll('.belly-stroke g[data-mm]')].map((dot) => shift(dot)[0]);"
                        + " return (dots[1] - dots[0]) / 2");

        assertThat(moved / SKIN_MM).isCloseTo(measure(patient, "abdominal-upper:left", 0), within(0.2));
    }

    private static String stillTimes() {
        return board.text(
                "return [...board.querySelectorAll('.act-still .quiet')].map((one) => one.textContent).join(' ')");
    }

    @Test
    void aTapIsComparedAtTheSameThreeMomentsWhetherTheLimbAnswersOrNot() {
        for (Bedside patient : List.of(healthy(), with("large-fibre-neuropathy", Side.NONE))) {
            board.draw(patient, "knee-reflex", List.of("knee-reflex:right"), true);

            assertThat(stillTimes()).isEqualTo("0 ms 190 ms 450 ms");
        }
    }

    @Test
    void theHammerIsTakenAwayAfterTheTap() {
        board.draw(healthy(), "biceps-reflex", List.of("biceps-reflex:right"), true);

        assertThat(board.text(
                        "return [...board.querySelectorAll('.hammer')].map((one) => one.getAttribute('visibility'))"
                                + ".join(' ')"))
                .isEqualTo("visible hidden hidden");
    }

    /** How far the sphincter's upper wall stands above the finger in it, in the units of the drawing, at a moment. */
    private static double wallAbove(double ms) {
        at(ms);
        return number("const wall = board.querySelector('.sphincter'); const box = wall.getBBox();"
                + " return 92 - (box.y + box.height + shift(wall)[1])");
    }

    @Test
    void theSphincterClosesOnTheFingerByTheShownMillimetresWhenTheGlansOrClitorisIsSqueezed() {
        draw(healthy(), "bulbocavernosus");
        double moved = wallAbove(0) - wallAbove(450);

        assertThat(moved / SKIN_MM)
                .isCloseTo(measure(healthy(), "bulbocavernosus", 0), within(0.3))
                .isGreaterThan(4);
        assertThat(wallAbove(450)).isBetween(-0.5, 5.0);
        assertThat(board.text("return board.querySelector('.squeeze').textContent"))
                .contains("glans or clitoris", "gloved finger", "sphincter");

        draw(healthy(), "anal-wink");
        assertThat(board.number("return board.querySelectorAll('.sphincter').length"))
                .isZero();
        assertThat(board.text("return board.textContent")).contains("pin", "skin round the anus");
    }

    /** The width of the way of the right hand in eight seconds, in the units of the drawing. */
    private static double handWay(Bedside patient) {
        board.draw(patient, "unrest", List.of("unrest:right"), true);
        return board.number("return [...board.querySelectorAll('.hand-way')].at(-1).getBBox().width");
    }

    @Test
    void restlessnessIsDrawnAsTheWayThatTheHandTakes() {
        double still = handWay(healthy());
        double dances = handWay(with("chorea", Side.NONE));
        double flings = handWay(with("hemiballism", Side.LEFT));

        assertThat(still).isLessThan(2);
        assertThat(dances).isGreaterThan(20);
        assertThat(flings).isGreaterThan(1.5 * dances);
    }

    @Test
    void aCopyingHandStaysOnItsArmAndNoNameLiesUnderIt() {
        draw(with("functional-tremor", Side.LEFT), "tremor-copying");
        for (int ms : List.of(125, 375, 900)) {
            at(ms);
            double over = board.number("const apart = (one, other) => one.right < other.left || other.right < one.left"
                    + " || one.bottom < other.top || other.bottom < one.top;"
                    + " const boxes = (what) => [...board.querySelectorAll(what)].map((one) => one.getBoundingClientRect());"
                    + " return boxes('.shaking text').filter((word) => boxes('.shaking .skin, .shaking .flesh')"
                    + ".some((hand) => !apart(word, hand))).length");
            assertThat(over).as("%d ms", ms).isZero();
        }
    }

    /** Campbell, Pocket Guide to DeJong: the distance at which two points are told apart. */
    @Test
    void thePatientSaysTwoDownToTheShownDistance() {
        Bedside patient = with("parietal-stroke", Side.RIGHT);
        draw(patient, "two-points");
        String twos = "return [...board.querySelectorAll('.two-points')[%d].querySelectorAll('.answer')]"
                + ".filter((one) => one.textContent.includes('two')).length";

        assertThat(number(twos.formatted(0))).isEqualTo(7);
        assertThat(number(twos.formatted(1))).isEqualTo(2);
    }

    /** Who cannot rise does not stay half-way: the hips sink back on the seat. Common practice, no source. */
    @Test
    void whoCannotRiseSinksBackOnTheSeat() {
        Bedside patient = healthy().lesion("spinal cord T8", 1, "6 weeks");
        List<Double> hips = patient.curve("chair-rise", "hips above the seat");
        List<Double> pushed = patient.curve("chair-rise", "weight on the arms");

        assertThat(hips.stream().mapToDouble(Double::doubleValue).max().orElseThrow())
                .isCloseTo(measure(patient, "chair-rise", 2), within(0.2));
        assertThat(hips.get(hips.size() - 1)).isLessThan(1);
        assertThat(pushed.get(0)).isZero();
        List<Double> well = healthy().curve("chair-rise", "hips above the seat");
        assertThat(well.get(well.size() - 1)).isEqualTo(45);
    }

    /** What cannot be lifted is no slowness: it lies, and never gets to the line on which it should go. From memory. */
    @Test
    void aParalysedArmLiesOnTheLapAndDropsBack() {
        Bedside patient = healthy().lesion("spinal cord C5 left half", 1, "6 weeks");
        String said = board.draw(patient, "finger-nose");
        String hands =
                "return [...board.querySelectorAll('.act')[%d].querySelectorAll('.aimed > g > path.skin:last-child')]"
                        + ".map((one) => Number(one.getAttribute('transform').split(' ')[1].replace(')', ''))).join(' ')";

        assertThat(said).contains("right: hand above the lap by 54 cm all along", "left: lies on the lap");
        assertThat(said).contains("it drops back and does not get to the line; goes 0 % of the way");
        assertThat(numbers(hands.formatted(0))).allSatisfy(y -> assertThat(y).isLessThan(140));
        assertThat(numbers(hands.formatted(1))).allSatisfy(y -> assertThat(y).isGreaterThan(200));
    }

    private static List<Double> numbers(String script) {
        return Stream.of(board.text(script).split(" ")).map(Double::valueOf).toList();
    }

    @Test
    void aWastedMuscleIsFlatterAndItsTapeShorterOnItsSideAlone() {
        Bedside patient = healthy().lesion("root T1 left", 1, "1 year");
        board.draw(
                patient,
                "muscle-bulk",
                List.of("muscle-bulk:right@first-dorsal-interosseous", "muscle-bulk:left@first-dorsal-interosseous"),
                false);
        double right = number("return board.querySelectorAll('.tape')[0].getBBox().height");
        double left = number("return board.querySelectorAll('.tape')[1].getBBox().height");

        double gone = measure(patient, "muscle-bulk:right@first-dorsal-interosseous", 0)
                - measure(patient, "muscle-bulk:left@first-dorsal-interosseous", 0);
        assertThat((right - left) / 3.4).isCloseTo(gone, within(0.2));
        assertThat(gone)
                .as("plainly wasted is more than half of what stands out, common practice")
                .isGreaterThan(measure(patient, "muscle-bulk:right@first-dorsal-interosseous", 0) / 2);
        assertThat(board.text("return board.textContent")).contains(" cm");
    }

    /** MRC scale as printed in World J Orthop 2017: grade 3 lifts the limb and gives way to any pressure. */
    @Test
    void aWeakLimbGivesWayToTheHandAndAStrongOneDoesNot() {
        draw(healthy().lesion("root C5 right", 1, "6 weeks"), "shoulder-abduction");
        at(2000);
        String turn = "return Number(/rotate\\(([-0-9.]+)/.exec(board.querySelectorAll('.power-panel')[%d]"
                + ".querySelector('g[transform^=rotate]').getAttribute('transform'))[1])";

        assertThat(Math.abs(number(turn.formatted(5)))).isCloseTo(25, within(0.1));
        assertThat(Math.abs(number(turn.formatted(2)))).isLessThan(20);
    }

    @Test
    void theStyleComesWithTheDrawing() {
        Object cap = board.run("""
                const done = arguments[arguments.length - 1];
                const host = document.createElement('div');
                document.body.append(host);
                import('/static/signs/index.js').then(({ showSign }) => {
                  const samples = Array(61).fill(0);
                  const shown = { sign: 'one-leg-stand', curves: [{ name: 'down', unit: 'degrees', stepMs: 50, samples }], measures: [], words: '' };
                  showSign(host, { manoeuvre: { id: 'trendelenburg', system: 'standing' }, probes: [{ side: 'right', shown }] });
                  const wait = () => { const edge = host.querySelector('.flesh-edge'); edge ? done(getComputedStyle(edge).strokeLinecap) : setTimeout(wait, 50); };
                  wait();
                });
                """);

        assertThat(cap).isEqualTo("round");
    }

    /** Nothing but numbers tells health from illness: the same elements of the same classes in the same order. */
    @Test
    void healthyAndIllAreDrawnWithTheSameElements() {
        List<Bedside> patients = List.of(
                healthy(),
                with("advanced-parkinsons-disease", Side.NONE),
                with("motor-neurone-disease", Side.NONE),
                with("cerebellar-degeneration", Side.NONE),
                with("parietal-stroke", Side.LEFT),
                healthy().lesion("spinal cord C5-C6", 0.8, "3 months"));
        for (Manoeuvre manoeuvre : DrawingBoard.limbs()) {
            List<Drawn> drawn = board.drawEach(patients, manoeuvre.id());
            assertThat(drawn)
                    .as(manoeuvre.id())
                    .allMatch(one -> one.shape().equals(drawn.get(0).shape()))
                    .allMatch(one -> one.said().matches("(?s).*\\d.*"));
        }
    }

    @Test
    void everySentenceSaysNumbersAndNoWordOfTheScale() {
        Bedside patient = healthy().lesion("internal capsule left", 0.6, "1 year");
        for (Manoeuvre manoeuvre : DrawingBoard.limbs()) {
            String said = board.draw(patient, manoeuvre.id());
            assertThat(said).as(manoeuvre.id()).matches("(?s).*\\d.*").doesNotContain("undefined", "NaN");
            for (String label : labels(manoeuvre)) {
                assertThat(said.contains(label))
                        .as(manoeuvre.id() + " " + label)
                        .isFalse();
            }
        }
    }

    /** The longer labels of the scale; a word such as "none" may stand in any sentence. */
    private static List<String> labels(Manoeuvre manoeuvre) {
        return manoeuvre.scale().isEmpty()
                ? List.of()
                : Bedside.REFERENCE.examination().scale(manoeuvre.scale()).levels().stream()
                        .map(level -> level.label())
                        .filter(label -> label.length() >= 12)
                        .toList();
    }
}
