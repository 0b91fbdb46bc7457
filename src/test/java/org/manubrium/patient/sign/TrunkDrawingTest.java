package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Variation;
import org.manubrium.patient.sign.DrawingBoard.Drawn;

/** What is drawn of belly, neck and back is what was shown, measured on the drawing in a real browser. */
class TrunkDrawingTest extends AtTheBoard {
    private static final List<String> SYSTEMS = List.of("abdomen", "neck", "back");
    private static final List<String> ILL = List.of(
            "cirrhosis-ascites",
            "peritonitis",
            "bowel-obstruction",
            "lymphoma",
            "graves-disease",
            "vertebral-collapse");

    private static Bedside healthy() {
        return Bedside.person(50, Variation.of(4));
    }

    private static Bedside with(String condition, Side side) {
        return healthy().condition(condition, side);
    }

    private static List<Manoeuvre> manoeuvres() {
        return Bedside.REFERENCE.examination().manoeuvres().stream()
                .filter(m -> SYSTEMS.contains(m.system()))
                .toList();
    }

    private static double width(String element) {
        return board.number("return board.querySelector('%s').getBBox().width".formatted(element));
    }

    private static double measure(Bedside patient, String item, int index) {
        return patient.show(item, Map.of()).measures().get(index).amount();
    }

    @Test
    void everySignHasADrawingOfOneShapeThatSaysItsNumbersAndWords() {
        List<Bedside> patients = Stream.concat(
                        Stream.of(healthy()), ILL.stream().map(condition -> with(condition, Side.NONE)))
                .toList();
        for (Manoeuvre manoeuvre : manoeuvres()) {
            List<Drawn> drawn = board.drawEach(patients, manoeuvre.id());
            List<Item> items = Examination.items(manoeuvre);
            var shown = healthy().show(items.get(items.size() - 1).toString(), Map.of());
            String said = drawn.get(0).said();

            assertThat(said).as(manoeuvre.id()).contains(shown.words()).hasSizeGreaterThan(10);
            shown.measures().forEach(m -> assertThat(said).as(manoeuvre.id()).contains(m.label()));
            assertThat(drawn)
                    .as(manoeuvre.id())
                    .allMatch(one -> one.shape().equals(drawn.get(0).shape()));
        }
    }

    /** A millimetre of a node is three units of the drawing. */
    @Test
    void aNodeIsAsWideUnderTheFingerAsItIsShown() {
        Bedside patient = with("node-tuberculosis", Side.LEFT);
        board.draw(patient, "neck-node-size", List.of("neck-node-size:left@posterior"), true);

        assertThat(width(".band:not(.faint)") / 3)
                .isCloseTo(measure(patient, "neck-node-size:left@posterior", 0), within(0.5))
                .isGreaterThan(20);
    }

    /** A soft node gives and slides, a rubbery one slides, a fixed one does neither; the bars say how far. */
    @Test
    void howFarANodeSlidesAndGivesIsDrawnAsItIsShown() {
        String item = "groin-node-feel:left";
        for (String condition : List.of("lymphoma", "node-tuberculosis")) {
            Bedside patient = with(condition, Side.LEFT);
            board.draw(patient, "groin-node-feel", List.of(item), true);

            for (int bar : List.of(0, 1)) {
                double drawn = board.number(
                        "return board.querySelectorAll('.felt-bar')[%d].getBBox().width / 3".formatted(bar));
                assertThat(drawn).isCloseTo(measure(patient, item, 1 + bar), within(0.2));
            }
        }
    }

    @Test
    void theFingertipsStandAsFarApartAsTheAortaIsWide() {
        Bedside patient = with("aortic-aneurysm", Side.NONE);
        board.draw(patient, "aorta-width");

        assertThat(width(".mark") / 20)
                .isCloseTo(measure(patient, "aorta-width", 0), within(0.05))
                .isGreaterThan(5);
    }

    @Test
    void theBorderWandersOnTheDrawingAsFarAsItIsShownTo() {
        Bedside patient = Bedside.healthy(50).shift("belly.fluid", 2);
        board.draw(patient, "shifting-dullness");
        double moved = board.number("return board.querySelector('.mark.dashed').getBBox().x"
                + " - board.querySelector('.mark:not(.dashed)').getBBox().x");

        assertThat(moved / 10)
                .isCloseTo(patient.amount("shifting-dullness"), within(0.15))
                .isGreaterThan(3);
    }

    /** The pubic bone lies 372 down, a centimetre is ten units. */
    @Test
    void theBladderStandsAsHighAsItIsShown() {
        Bedside patient = with("urinary-retention", Side.NONE);
        board.draw(patient, "bladder-percussion");
        double top = board.number("return board.querySelector('.mark').getBBox().y");

        assertThat((372 - top) / 10)
                .isCloseTo(patient.amount("bladder-percussion"), within(0.1))
                .isGreaterThan(9);
    }

    /** The ribs cross the line of the collar bone 118 down and 100 across. */
    @Test
    void theEdgeOfTheLiverCrossesTheLineOfTheCollarBoneWhereItIsShown() {
        Bedside patient = with("liver-secondaries", Side.NONE);
        board.draw(patient, "liver-edge");
        double down = board.number("const edge = board.querySelector('.mark'); const all = edge.getTotalLength();"
                + " let near = edge.getPointAtLength(0); for (let l = 0; l <= all; l += all / 2000) {"
                + " const at = edge.getPointAtLength(l); if (Math.abs(at.x - 100) < Math.abs(near.x - 100)) near = at; }"
                + " return near.y");

        assertThat((down - 118) / 10)
                .isCloseTo(patient.amount("liver-edge"), within(0.1))
                .isGreaterThan(4);
    }

    @Test
    void theRaisedLegStandsAtItsAngle() {
        Bedside patient = with("disc-prolapse", Side.LEFT);
        board.draw(patient, "straight-leg-raise", List.of("straight-leg-raise:left"), true);
        double drawn = board.number("const leg = board.querySelector('.limb-edge.thick');"
                + " const hip = leg.getPointAtLength(0), knee = leg.getPointAtLength(100);"
                + " return Math.atan2(hip.y - knee.y, knee.x - hip.x) * 180 / Math.PI");

        assertThat(drawn)
                .isCloseTo(patient.amount("straight-leg-raise:left"), within(0.5))
                .isLessThan(60);
    }

    @Test
    void whatThePatientSaysOfAPlaceStandsUnderItsDrawing() {
        String item = "belly-light-sides:right@lower";
        for (Bedside patient : List.of(healthy(), with("appendicitis", Side.NONE))) {
            board.draw(patient, "belly-light-sides", List.of(item), true);

            assertThat(board.text("return board.querySelector('.point-figure .felt').textContent"))
                    .contains(patient.show(item, Map.of()).words())
                    .hasSizeGreaterThan(4);
        }
    }

    @Test
    void whatIsSilentIsShownAsNothingAndDrawnAsNothing() {
        for (String silent : List.of("belly-bruit@liver", "thyroid-bruit")) {
            board.draw(healthy(), silent.split("@", 2)[0], List.of(silent), true);

            assertThat(measure(healthy(), silent, 0)).as(silent).isZero();
            assertThat(width(".hatch")).as(silent).isZero();
        }
        Bedside ill = with("graves-disease", Side.NONE);
        board.draw(ill, "thyroid-bruit");

        assertThat(measure(ill, "thyroid-bruit", 0)).isGreaterThan(5);
        assertThat(width(".hatch")).isGreaterThan(10);
    }

    @Test
    void whatAHandFeelsSendsTheStudentToAPartner() {
        for (String felt :
                List.of("belly-light-sides", "liver-edge", "kidney-between-hands", "neck-node-size", "spine-tap")) {
            board.draw(healthy(), felt);

            assertThat(board.number("return board.querySelectorAll('.partner').length"))
                    .as(felt)
                    .isEqualTo(1);
        }
    }

    /** Fifty millimetres are a hundred units up; anyone moves a little under a hand. */
    @Test
    void theBodyDrawsAwayOnTheDrawingAsFarAsItIsShown() {
        Map<String, Bedside> sore = Map.of(
                "spine-tap@chest", with("vertebral-collapse", Side.NONE),
                "loin-tap:left", with("pyelonephritis", Side.LEFT),
                "sacroiliac-press:left", with("sacroiliitis", Side.LEFT));
        sore.forEach((item, patient) -> {
            String manoeuvre = item.split("[:@]", -1)[0];
            double most = away(patient, item);
            board.draw(patient, manoeuvre, List.of(item), true);
            double drawn = board.number("return board.querySelector('.away').getBBox().height") / 2;
            double eye = board.number("return board.querySelector('.pained .hole').getBBox().height");
            board.draw(healthy(), manoeuvre, List.of(item), true);

            assertThat(drawn).as(item).isCloseTo(most, within(0.2)).isGreaterThan(12);
            assertThat(board.number("return board.querySelector('.away').getBBox().height") / 2)
                    .as(item)
                    .isCloseTo(away(healthy(), item), within(0.2))
                    .isLessThan(5);
            assertThat(eye)
                    .as(item)
                    .isLessThan(0.8 * board.number("return board.querySelector('.pained .hole').getBBox().height"));
        });
    }

    private static double away(Bedside patient, String item) {
        return patient.curve(item, "draws away from the hand").stream()
                .mapToDouble(mm -> mm)
                .max()
                .orElseThrow();
    }

    /** A millimetre of the thyroid is two units of the drawing. */
    @Test
    void bothLobesAreAsHighAndAsWideAsTheyAreShown() {
        Bedside patient = with("graves-disease", Side.NONE);
        board.draw(patient, "goitre-grade");
        for (int lobe = 0; lobe < 2; lobe++) {
            String box = "const box = board.querySelectorAll('.band')[" + lobe + "].getBBox(); return box.";

            assertThat(board.number(box + "height") / 2)
                    .isCloseTo(measure(patient, "goitre-grade", 2 * lobe), within(0.5))
                    .isGreaterThan(40);
            assertThat(board.number(box + "width") / 2)
                    .isCloseTo(measure(patient, "goitre-grade", 2 * lobe + 1), within(0.5))
                    .isGreaterThan(20);
        }
    }

    /** The navel lies 180 across, a centimetre is ten units; the same words stand beside a flank that rings throughout. */
    @Test
    void theNoteOfTheFlankChangesWhereItIsShownToAndNothingSaysDull() {
        for (Bedside patient : List.of(healthy(), with("cirrhosis-ascites", Side.NONE))) {
            board.draw(patient, "flank-note", List.of("flank-note:left"), true);
            double x = board.number("return board.querySelector('.mark').getBBox().x");

            assertThat((x - 180) / 10).isCloseTo(measure(patient, "flank-note:left", 0), within(0.1));
            assertThat(board.text("return board.textContent")).doesNotContain("dull", "resonant");
        }
    }

    /** No line of the two spines runs through a word beside them, however bent they are. */
    @Test
    void theSpinesKeepOffTheirWords() {
        for (String condition : List.of("vertebral-collapse", "ankylosing-spondylitis", "kyphoscoliosis")) {
            board.draw(with(condition, condition.equals("kyphoscoliosis") ? Side.LEFT : Side.NONE), "spine-look");

            assertThat(
                            board.number(
                                    "const words = [...board.querySelectorAll('svg .tick')].map((t) => t.getBBox());"
                                            + " return [...board.querySelectorAll('svg .limb-edge')].filter((p) => words.some((b) =>"
                                            + " Array.from({ length: 300 }, (_, i) => p.getPointAtLength(p.getTotalLength() * i / 299))"
                                            + ".some(({ x, y }) => x > b.x && x < b.x + b.width && y > b.y && y < b.y + b.height))).length"))
                    .as(condition)
                    .isZero();
        }
    }
}
