package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Variation;
import org.manubrium.patient.sign.DrawingBoard.Drawn;

/** What is drawn of the head is what was shown, measured on the drawing in a real browser. */
class HeadDrawingTest extends AtTheBoard {
    /** From the middle of the globe to the plane of the iris, mm, as it is drawn. */
    private static final double GLOBE = 10;

    private static Bedside with(String condition, Side side) {
        return Bedside.person(50, Variation.of(12)).condition(condition, side);
    }

    private static Bedside healthy() {
        return Bedside.person(50, Variation.of(12));
    }

    private static double measure(Bedside patient, String item, String label) {
        return patient.show(item, Map.of()).measures().stream()
                .filter(measure -> measure.label().equals(label))
                .findFirst()
                .orElseThrow()
                .amount();
    }

    /** Where the lowest point of a path lies across, in the units of the drawing. */
    private static double lowestAcross(String path) {
        return board.number("const path = %s; let low = path.getPointAtLength(0); const all = path.getTotalLength();"
                        .formatted(path)
                + "for (let l = 0; l <= all; l += all / 400) { const at = path.getPointAtLength(l);"
                + " if (at.y > low.y) low = at; } return low.x;");
    }

    private static double height(String path) {
        return board.number("return %s.getBBox().y".formatted(path));
    }

    /** Degrees by which an eye on the board is turned outwards. */
    private static double outward(String eye, int which) {
        double across =
                board.number("return Number(/translate\\(([-0-9.]+)/.exec(board.querySelectorAll('.eyeball.%s')[%d]"
                                .formatted(eye, which)
                        + ".getAttribute('transform'))[1])");
        return (eye.equals("right") ? -1 : 1) * Math.toDegrees(Math.asin(across / GLOBE));
    }

    private static double settled(Bedside patient, String item, String curve) {
        List<Double> samples = patient.curve(item, curve);
        return samples.get(samples.size() - 1);
    }

    @Test
    void theUvulaHangsAsFarFromTheMiddleAsItIsShownTo() {
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            Bedside patient = with("vagus-palsy", side);
            board.draw(patient, "palate-rise");
            double right = measure(patient, "palate-rise", "uvula moves to the right by");

            assertThat(Math.abs(right)).isGreaterThan(3);
            assertThat(lowestAcross("board.querySelectorAll('.mouth-uvula')[1]"))
                    .isCloseTo(-right, within(0.3));
            assertThat(lowestAcross("board.querySelectorAll('.mouth-uvula')[0]"))
                    .isCloseTo(0, within(0.3));
        }
    }

    /** X22: lateral medullary syndrome table (secondary); Clinical neurology textbook. The page's right is their left. */
    @Test
    void theUvulaOfARightLateralMedullaIsDrawnToTheLeft() {
        board.draw(with("lateral-medullary-infarct", Side.RIGHT), "palate-rise");

        assertThat(lowestAcross("board.querySelectorAll('.mouth-uvula')[1]")).isGreaterThan(3);
    }

    @Test
    void theTipOfTheTongueLiesWhereItIsShownTo() {
        Bedside patient = with("hypoglossal-palsy", Side.RIGHT);
        board.draw(patient, "tongue-out");
        double right = measure(patient, "tongue-out", "tip lies to the right of the middle by");

        assertThat(right).isGreaterThan(4);
        assertThat(lowestAcross("board.querySelector('.tongue-body')")).isCloseTo(-right, within(0.5));
    }

    @Test
    void theLowerTeethLieWhereTheyAreShownTo() {
        Bedside patient = with("trigeminal-neuropathy", Side.RIGHT);
        board.draw(patient, "jaw-opening");
        double across = board.number("return Number(/translate\\(([-0-9.]+)/.exec("
                + "board.querySelector('.lower-teeth').getAttribute('transform'))[1])");

        assertThat(across)
                .isCloseTo(-measure(patient, "jaw-opening", "lower teeth move to the right by"), within(0.05));
    }

    /** From memory: an eye without its sixth nerve does not go out past the middle. */
    @Test
    void theEyeOfASixthPalsyStandsShortOnTheDrawingByWhatIsShown() {
        Bedside patient = with("sixth-nerve-palsy", Side.LEFT);
        String item = "eye-movement:left@outward";
        // straight ahead comes first
        board.draw(patient, "eye-movement", List.of(item), true);
        double drawn = outward("left", 1);
        double shown = settled(patient, item, "left outwards");
        board.draw(healthy(), "eye-movement", List.of(item), true);
        double full = outward("left", 1);

        assertThat(drawn).isCloseTo(shown, within(0.5));
        assertThat(full - drawn)
                .isCloseTo(settled(healthy(), item, "left outwards") - shown, within(1.0))
                .isGreaterThan(20);
    }

    @Test
    void everyCellOfTheNinePositionsHoldsBothEyesWhereTheyCameToStand() {
        Bedside patient = with("third-nerve-compression", Side.RIGHT);
        List<String> items = List.of("eye-movement:right@up", "eye-movement:right@inward", "eye-movement:left@inward");
        board.draw(patient, "eye-movement", items, true);
        // the cells that were tried, row by row: up, to the patient's right, straight ahead, to the left
        Map<String, Integer> cells = Map.of(items.get(0), 0, items.get(2), 1, items.get(1), 3);
        cells.forEach((item, cell) -> {
            for (String eye : List.of("right", "left")) {
                assertThat(outward(eye, cell))
                        .as("%s %s", item, eye)
                        .isCloseTo(settled(patient, item, eye + " outwards"), within(0.5));
            }
        });
        assertThat(board.number("return board.querySelectorAll('.gaze-cell').length"))
                .isEqualTo(9);
        assertThat(board.number("return board.querySelectorAll('.gaze-cell.not-tried').length"))
                .isEqualTo(5);
    }

    @Test
    void theStillsShowAllNinePositionsWhateverWasLookedAtLast() {
        for (Bedside patient : List.of(healthy(), with("third-nerve-compression", Side.LEFT))) {
            String said = board.draw(patient, "eye-movement");

            assertThat(said).doesNotContain("NaN");
            assertThat(board.number("return board.querySelectorAll('.gaze-cell .eyeball.left').length"))
                    .isEqualTo(9);
            assertThat(board.number("return board.querySelectorAll('.eyeball.left').length"))
                    .isEqualTo(9);
            assertThat(board.number("const chart = board.querySelector('.gaze-chart').getBoundingClientRect();"
                            + " return board.querySelector('svg.trace').getBoundingClientRect().top - chart.bottom"))
                    .isPositive();
        }
    }

    /** Counted on the eye itself, moved through time with the stop-watch of the trace. */
    @Test
    void theOtherEyeOfAFasciculusBeatsOnTheDrawingAsOftenAsItIsShownTo() {
        Bedside patient = with("fasciculus-plaque", Side.RIGHT);
        String item = "eye-movement:right@inward";
        board.draw(patient, "eye-movement", List.of(item), false);
        double drawn = beats(watched("left"), 25);

        assertThat(drawn)
                .isCloseTo(beats(settledPart(patient.curve(item, "left outwards")), 25), within(0.15))
                .isCloseTo(2.5, within(0.2));
        assertThat(beats(watched("right"), 25)).isZero();
    }

    private static List<Double> watched(String eye) {
        Object seen = board.read("const watch = board.querySelector('input.watch'); const found = [];"
                + " for (let ms = 500; ms < 2975; ms += 25) { watch.value = ms; watch.dispatchEvent(new Event('input'));"
                + " found.push(Number(/translate\\(([-0-9.]+)/.exec(board.querySelector('.eyeball.%s')".formatted(eye)
                + ".getAttribute('transform'))[1])); } return found");
        List<Double> found = new ArrayList<>();
        ((List<?>) seen).forEach(one -> found.add(((Number) one).doubleValue()));
        return found;
    }

    /** Half a second after the finger has moved. */
    private static List<Double> settledPart(List<Double> curve) {
        return curve.subList(20, curve.size());
    }

    /** Quick returns a second. */
    private static double beats(List<Double> places, double stepMs) {
        double most = places.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double least = places.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        List<Integer> jumps = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            if (Math.abs(places.get(i) - places.get(i - 1)) > Math.max(0.2, (most - least) / 3)) {
                jumps.add(i);
            }
        }
        return jumps.size() < 2
                ? 0
                : (jumps.size() - 1) * 1000.0 / ((jumps.get(jumps.size() - 1) - jumps.get(0)) * stepMs);
    }

    @Test
    void theBrowOfAFacialPalsyStaysWhereItHangs() {
        Bedside patient = with("facial-palsy", Side.LEFT);
        board.draw(patient, "brow-lift");
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            String brow = ".face-half.%s .face-brow".formatted(side.word());
            double rest = height("board.querySelectorAll('%s')[0]".formatted(brow));
            double lifted = height("board.querySelectorAll('%s')[1]".formatted(brow));

            assertThat(rest - lifted)
                    .isCloseTo(measure(patient, "brow-lift:left", side.word() + " brow rises by"), within(0.1));
        }
        assertThat(height("board.querySelector('.face-half.left .face-brow')")
                        - height("board.querySelector('.face-half.right .face-brow')"))
                .isCloseTo(measure(patient, "brow-lift:left", "left brow hangs by"), within(0.1))
                .isGreaterThan(2);
    }

    @Test
    void anEyeThatDoesNotCloseIsDrawnOpenByWhatIsLeft() {
        Bedside patient = with("facial-palsy", Side.LEFT);
        board.draw(patient, "eye-closure");
        double open = board.number("return board.querySelectorAll('.face-half.left .eye-margin')[1].getBBox().height");
        double shut = board.number("return board.querySelectorAll('.face-half.right .eye-margin')[1].getBBox().height");
        double left = measure(patient, "eye-closure:left", "left lids open at rest by")
                - measure(patient, "eye-closure:left", "left lids come together by");

        assertThat(open).isCloseTo(left, within(0.4)).isGreaterThan(5);
        assertThat(shut).isLessThan(open / 2);
    }

    @Test
    void anEyeThatStandsForwardIsDrawnForward() {
        Bedside patient = with("thyroid-eye-disease", Side.NONE);
        board.draw(patient, "proptosis");
        for (String eye : List.of("right", "left")) {
            double globe = board.number(
                    "return Number(/translate\\(2 ([-0-9.]+)/.exec(board.querySelector('.globe.%s')".formatted(eye)
                            + ".getAttribute('transform'))[1])");

            assertThat(12 - globe).isEqualTo(measure(patient, "proptosis:left", eye + " eye in front of the rim by"));
        }
    }

    private static int[] colour(String element) {
        String[] parts = board.text("return getComputedStyle(board.querySelector('%s')).fill".formatted(element))
                .replaceAll("[^0-9, ]", "")
                .trim()
                .split("[, ]+");
        return new int[] {Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[2])};
    }

    private static int redness(Bedside patient) {
        board.draw(patient, "ear-drum");
        int[] colour = colour(".ear-drum.left .drum");
        return colour[0] - colour[1];
    }

    @Test
    void anInflamedDrumIsRedAndASoundOneIsGrey() {
        assertThat(redness(with("middle-ear-infection", Side.LEFT))).isGreaterThan(90);
        assertThat(redness(healthy())).isBetween(-20, 25);
    }

    @Test
    void theGapInADrumCoversTheShareOfItThatIsShown() {
        Bedside patient = with("drum-perforation", Side.LEFT);
        board.draw(patient, "ear-drum");
        double across = board.number("return board.querySelector('.ear-drum.left .drum-hole').getBBox().width");
        double whole = board.number("return board.querySelector('.ear-drum.left .drum').getBBox().width");

        assertThat(100 * across * across / whole / whole)
                .isCloseTo(measure(patient, "ear-drum:left", "gap in the drum"), within(1.0))
                .isGreaterThan(4);
        assertThat(board.number("return board.querySelector('.ear-drum.right .drum-hole').getBBox().width"))
                .isZero();
    }

    @Test
    void theCupIsDrawnAsHighAsItIsShown() {
        Bedside patient = with("advanced-glaucoma", Side.RIGHT);
        board.draw(patient, "cup-ratio");
        double cup = board.number("return board.querySelector('.fundus-cup').getBBox().height");
        double disc = board.number("return board.querySelector('.fundus-disc').getBBox().height");

        assertThat(100 * cup / disc)
                .isCloseTo(measure(patient, "cup-ratio:right", "cup is so much of the height of the disc"), within(0.5))
                .isGreaterThan(80);
    }

    /** X60: secondary text on tuning-fork results. */
    @Test
    void aPatientPointsAsFarToTheSideAsIsShown() {
        Bedside patient = with("dead-ear", Side.LEFT);
        board.draw(patient, "weber-test");
        double middle =
                board.number("const box = board.querySelector('.pointing').getBBox(); return box.x + box.width / 2");

        assertThat(measure(patient, "weber-test", "points to the right of the midline"))
                .isEqualTo(7);
        assertThat(middle).isCloseTo(-7 * 10.3, within(3.0));
    }

    /** From memory: a lesion behind the chiasm takes the outer half of one eye and the inner half of the other. */
    @Test
    void theFieldSaysOnlyWhatWasTriedAndWhereItWasTried() {
        Bedside patient = with("occipital-infarct", Side.LEFT);
        board.draw(
                patient,
                "visual-field",
                List.of("visual-field:right@upper-outer", "visual-field:left@upper-outer"),
                true);
        String said =
                board.text("return [...board.querySelectorAll('.field-said li')].map(li => li.textContent).join('|')");

        assertThat(said.split("\\|", -1)).hasSize(2);
        assertThat(said.split("\\|", -1)[0]).startsWith("upper outer quarter").contains("Nothing there yet.");
        assertThat(said.split("\\|", -1)[1]).startsWith("upper outer quarter").contains("Yes, red.");
        assertThat(board.number("return board.querySelectorAll('.field-point .field-mark[d=\"M0 0\"]').length"))
                .isEqualTo(12);
    }

    /** The marks of the points of one eye, in the order in which they were tried. */
    private static List<String> fieldMarks(Bedside patient, Side eye) {
        board.draw(patient, "visual-field");
        return List.of(board.text(
                        "return [...board.querySelectorAll('.one-field')][%d].querySelectorAll('.field-mark').values()"
                                        .formatted(eye == Side.RIGHT ? 0 : 1)
                                + ".map((mark) => mark.getAttribute('d')).toArray().join('|')")
                .split("\\|", -1));
    }

    @Test
    void aPointThatIsWashedOutHasAMarkOfItsOwnWhichTheLegendNames() {
        List<String> seen = fieldMarks(healthy(), Side.LEFT);
        List<String> dim = fieldMarks(with("optic-neuritis", Side.LEFT), Side.LEFT);
        String washed =
                board.text("return [...board.querySelectorAll('.field-legend li')].find((one) => one.textContent"
                        + ".includes('washed out')).querySelector('.field-mark').getAttribute('d')");
        String said =
                board.text("return [...board.querySelectorAll('.field-said li')].map(li => li.textContent).join('|')");

        assertThat(seen).hasSize(7).containsOnly(seen.get(0)).doesNotContain(washed);
        assertThat(dim).hasSize(7).contains(washed);
        assertThat(dim.stream().filter(washed::equals).count()).isEqualTo(said.split("washed out", -1).length - 1);
    }

    /** The heights, in pixels, of a pupil's line on the trace of its change, at the start and three seconds later. */
    private static double fallenBy(Bedside patient, String eye) {
        board.draw(patient, "pupil-light-direct", List.of("pupil-light-direct:right"), true);
        return board.number(
                "const line = board.querySelectorAll('svg.trace')[1].querySelector('.curve.%s')".formatted(eye)
                        + ".getAttribute('d').slice(1).split('L').map((pair) => pair.trim().split(' ').map(Number));"
                        + " return line[58][1] - line[0][1]");
    }

    /** A tonic pupil narrows by some tenths of a millimetre, one without its third nerve not at all. */
    @Test
    void aWeakReactionIsToldFromNoneOnTheStills() {
        Bedside weak = with("tonic-pupil", Side.RIGHT);
        Bedside none = with("third-nerve-compression", Side.RIGHT);

        assertThat(fallenBy(weak, "right")).isBetween(8.0, 30.0);
        assertThat(fallenBy(none, "right")).isBetween(-1.0, 1.0);
        assertThat(fallenBy(healthy(), "right")).isGreaterThan(60);
    }

    @Test
    void theStillsOfATorchOnEitherEyeAreAllShown() {
        Bedside patient = with("tonic-pupil", Side.RIGHT);
        board.draw(patient, "pupil-light-direct");
        // the curves have a sample for every 50 ms
        double right = patient.curve("pupil-light-direct:right", "right").get(20);
        double left = patient.curve("pupil-light-direct:right", "left").get(20);

        assertThat(board.text(
                        "return [...board.querySelectorAll('.pupil-side')].map((one) => one.textContent).join(' ')"))
                .isEqualTo("right left");
        assertThat(board.text("return [...board.querySelectorAll('.pupil-still figcaption')][1].textContent"))
                .isEqualTo(
                        "1 s, 1 s after 1torch on the right eye: right %.1f mm, left %.1f mm".formatted(right, left));
    }

    private static String moments() {
        return board.text(
                "return [...board.querySelectorAll('.pupil-still b')].map((one) => one.textContent).join('|')");
    }

    @Test
    void thePupilsAreComparedAtTheSameMomentsInEverybody() {
        Map<String, String> moments = Map.of(
                "swinging-light",
                        "just before 1|1 s, 1 s after 1|2.9 s, just before 2|4.2 s, 1 s after 2|6.1 s, just before 3|"
                                + "7.4 s, 1 s after 3|9.3 s, just before 4|10.6 s, 1 s after 4|12.8 s, the end",
                "pupil-near",
                        "just before 1|1 s, 1 s after 1|4.7 s, just before 2|6 s, 1 s after 2|10 s, 5 s after 2|"
                                + "11.9 s, the end");
        moments.forEach((manoeuvre, told) -> {
            for (Bedside patient :
                    List.of(healthy(), with("tonic-pupil", Side.LEFT), with("optic-neuritis", Side.RIGHT))) {
                board.draw(patient, manoeuvre);
                assertThat(moments()).as(manoeuvre).isEqualTo(told);
            }
        });
    }

    /** From memory: with a relative afferent defect both pupils widen when the torch comes to that eye. */
    @Test
    void theStillsOfTheSwingingTorchShowBothPupilsWidenAsItComesToTheWorseEye() {
        board.draw(with("optic-neuritis", Side.LEFT), "swinging-light");
        List<Double> right = widths();
        board.draw(healthy(), "swinging-light");
        List<Double> healthy = widths();

        assertThat(right.get(3) - right.get(2)).isGreaterThan(0.2);
        assertThat(right.get(7) - right.get(6)).isGreaterThan(0.2);
        assertThat(right.get(5) - right.get(4)).isNegative();
        assertThat(healthy.get(3) - healthy.get(2)).isLessThan(0.15);
    }

    /** Of the right pupil in each still, mm. */
    private static List<Double> widths() {
        return ((List<?>) board.read("return [...board.querySelectorAll('.pupil-still')].map((one) =>"
                        + " Number(one.querySelector('.pupil').getAttribute('r')) / 4)"))
                .stream().map(one -> ((Number) one).doubleValue()).toList();
    }

    @Test
    void theBiteHasABarForEachMuscleAndOneForThePushOfTheSideUnderTheHand() {
        Bedside patient = with("angle-tumour", Side.LEFT);
        board.draw(patient, "bite");
        List<Double> bars = ((List<?>) board.read("return [...board.querySelectorAll('.named-bar .bar-part')]"
                        + ".map((bar) => Number(bar.getAttribute('width')))"))
                .stream().map(one -> ((Number) one).doubleValue()).toList();
        String named = board.text(
                "return [...board.querySelectorAll('.named-bar > span')]" + ".map((one) => one.textContent).join('|')");

        assertThat(named).startsWith("right muscle").contains("|left muscle", "|left side pushes");
        assertThat(bars.get(0) / bars.get(1))
                .isCloseTo(
                        measure(patient, "bite", "right muscle over the jaw thickens by")
                                / measure(patient, "bite", "left muscle over the jaw thickens by"),
                        within(0.1))
                .isGreaterThan(1.5);
    }

    @Test
    void aToothIsDrawnWithAHoleWhereTeethAreReadAsDecayedAndNowhereElse() {
        for (double decay : List.of(0.0, 0.3, 0.6, 1.0, 1.6, 5.0)) {
            Bedside patient = healthy().shift("teeth.decay", decay);
            board.draw(patient, "teeth-and-gums");
            String holes = board.text("return board.querySelector('.tooth-hole').getAttribute('d')");

            assertThat(holes.isEmpty())
                    .as("%s", decay)
                    .isEqualTo(!patient.word("teeth-and-gums").equals("decayed"));
        }
    }

    @Test
    void everySignOfTheHeadHasADrawingThatSaysItsNumbersAndWords() {
        Bedside patient = with("third-nerve-compression", Side.RIGHT);
        for (Manoeuvre manoeuvre : DrawingBoard.manoeuvres()) {
            String said = board.draw(patient, manoeuvre.id());
            Appearance shown = patient.show(last(manoeuvre), Map.of());

            assertThat(said).as(manoeuvre.id()).contains(shown.words()).hasSizeGreaterThan(10);
            assertThat(said).as(manoeuvre.id()).doesNotContain("NaN", "undefined", "Infinity");
            assertThat(board.number("return board.querySelectorAll('svg').length"))
                    .as(manoeuvre.id())
                    .isPositive();
        }
    }

    private static String last(Manoeuvre manoeuvre) {
        var items = org.manubrium.examination.Examination.items(manoeuvre);
        return items.get(items.size() - 1).toString();
    }

    @Test
    void healthyAndIllAreDrawnWithTheSameElementsInTheSameClasses() {
        List<Bedside> patients = List.of(
                healthy(),
                with("facial-palsy", Side.LEFT),
                with("third-nerve-compression", Side.RIGHT),
                with("fasciculus-plaque", Side.LEFT),
                with("vagus-palsy", Side.RIGHT).condition("hypoglossal-palsy", Side.LEFT),
                with("retinal-vein-occlusion", Side.LEFT).condition("middle-ear-infection", Side.RIGHT),
                with("proliferative-retinopathy", Side.NONE).condition("dental-decay", Side.NONE),
                with("retinal-artery-occlusion", Side.RIGHT).condition("drum-perforation", Side.LEFT),
                with("cataract", Side.LEFT).condition("dead-ear", Side.LEFT),
                with("thyroid-eye-disease", Side.NONE).condition("oral-thrush", Side.NONE));
        for (Manoeuvre manoeuvre : DrawingBoard.manoeuvres()) {
            List<Drawn> drawn = board.drawEach(patients, manoeuvre.id());
            assertThat(drawn)
                    .as(manoeuvre.id())
                    .allMatch(one -> one.shape().equals(drawn.get(0).shape()));
        }
    }

    @Test
    void aStillStaysAsItIs() {
        for (Manoeuvre manoeuvre : DrawingBoard.manoeuvres()) {
            board.draw(healthy(), manoeuvre.id());
            Object same = board.run("const done = arguments[0]; const board = document.getElementById('board');"
                    + " const before = board.innerHTML; let frames = 0;"
                    + " const next = () => ++frames < 4 ? requestAnimationFrame(next) : done(before === board.innerHTML);"
                    + " requestAnimationFrame(next)");
            assertThat(same).as(manoeuvre.id()).isEqualTo(true);
        }
    }
}
