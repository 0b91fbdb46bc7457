package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Finding;

/** The belly against what texts and studies say of it; the source stands beside each check. */
class BellySignsTest {
    private static Bedside with(String condition) {
        return Bedside.healthy(60).condition(condition, Side.NONE);
    }

    private static Bedside fluid(double litres) {
        return Bedside.healthy(60).shift("belly.fluid", litres);
    }

    /** Text on ascites: flank dullness needs about 1.5 L; shifting dullness next, the fluid wave last. */
    @Test
    void theSignsOfFluidComeInTheirOrder() {
        assertThat(fluid(1).word("flank-note:right")).isEqualTo("resonant");
        assertThat(fluid(1.6).word("flank-note:right")).isEqualTo("dull");
        assertThat(fluid(1.6).sign("shifting-dullness").normal()).contains(false);
        assertThat(fluid(1.6).word("fluid-thrill")).isEqualTo("none");
        assertThat(fluid(4).word("fluid-thrill")).isEqualTo("felt");
    }

    /** X73 (Udell 2012): ascites points to cirrhosis (LR+ 7.2): the tabled cirrhosis with ascites has every sign of fluid. */
    @Test
    void cirrhosisWithAscitesShowsFluidAndPortalPressure() {
        Bedside patient = with("cirrhosis-ascites");

        assertThat(patient.word("belly-shape")).isEqualTo("full-flanks");
        assertThat(patient.word("flank-note:left")).isEqualTo("dull");
        assertThat(patient.amount("shifting-dullness")).isGreaterThan(3);
        assertThat(patient.word("belly-veins")).isEqualTo("from-navel");
        assertThat(patient.word("spleen-percussion")).isNotEqualTo("resonant");
        assertThat(patient.amount("liver-span")).isLessThan(6);
        assertThat(patient.meaning("shifting-dullness")).isEqualTo("free-fluid");
        assertThat(patient.meaning("belly-veins")).isEqualTo("portal-by-pass");
    }

    /** Abdominal examination text: a span of 6-12 cm by percussion is usual. */
    @Test
    void healthySpansLieBetweenSixAndTwelveCentimetres() {
        for (long seed = 1; seed < 200; seed++) {
            double span =
                    Bedside.person(50, org.manubrium.patient.Variation.of(seed)).amount("liver-span");
            assertThat(span).isBetween(6.0, 12.0);
        }
    }

    /** Mattos 2009: an edge 4 cm low points to hyperinflation as often as to disease; the span tells them apart. */
    @Test
    void overfilledLungsPushAnOrdinaryLiverDown() {
        Bedside emphysema = with("emphysema");
        Bedside secondaries = with("liver-secondaries");

        assertThat(emphysema.amount("liver-edge")).isGreaterThanOrEqualTo(4);
        assertThat(emphysema.sign("liver-span").normal()).contains(true);
        assertThat(emphysema.meaning("liver-edge")).isEqualTo("lung-overfilled");
        assertThat(secondaries.sign("liver-span").normal()).contains(false);
        assertThat(secondaries.word("liver-feel")).isEqualTo("hard-humps");
    }

    /** Common practice, no source: a leaking tricuspid valve makes the liver pulsate; congestion makes it large and sore. */
    @Test
    void theRightHeartShowsInTheBelly() {
        assertThat(with("tricuspid-regurgitation").word("liver-feel")).isEqualTo("pulsing");
        Bedside failing = with("right-heart-failure");
        assertThat(failing.word("liver-feel")).isEqualTo("sore-smooth");
        assertThat(failing.sign("neck-vein-height").normal()).contains(false);
        assertThat(failing.sign("shifting-dullness").normal()).contains(false);
        assertThat(with("constrictive-pericarditis").word("flank-note:right")).isEqualTo("dull");
    }

    /** Grover 1993: normal length about 12-13 cm; Barkun 1991: percussion first, the feel is worse in the obese. */
    @Test
    void percussionFindsASpleenBeforeTheHandAndFatHidesIt() {
        Bedside slight = Bedside.healthy(40).shift("spleen.length", 3.5);
        Bedside large = Bedside.healthy(40).shift("spleen.length", 6.5);

        assertThat(slight.word("spleen-percussion")).isEqualTo("dull-breath-in");
        assertThat(slight.amount("spleen-edge")).isZero();
        assertThat(large.word("spleen-percussion")).isEqualTo("dull");
        assertThat(large.amount("spleen-edge")).isPositive();
        assertThat(large.shift("belly.wall", 50).amount("spleen-edge")).isZero();
    }

    /** Lederle & Simel 1999: the width counts; Fink 2000: a large girth hides it, and a negative feel does not exclude. */
    @Test
    void aWideAortaDrivesTheFingersApartUnlessFatHidesIt() {
        Bedside patient = with("aortic-aneurysm");

        assertThat(patient.amount("aorta-width")).isGreaterThan(4);
        assertThat(patient.word("aorta-beat")).isEqualTo("outwards");
        assertThat(patient.meaning("aorta-width")).isEqualTo("aorta-wide");
        assertThat(patient.shift("belly.wall", 60).amount("aorta-width")).isZero();
        assertThat(patient.shift("belly.wall", 60).word("aorta-beat")).isEqualTo("not-felt");
        Bedside thin = Bedside.healthy(40).shift("belly.wall", -12);
        assertThat(thin.word("aorta-beat")).isEqualTo("forwards");
        assertThat(thin.sign("aorta-width").normal()).contains(true);
    }

    /** McGee ch. 52: rigidity, guarding and pain on tapping count for more than rebound. */
    @ParameterizedTest
    @ValueSource(doubles = {0.35, 0.4, 0.45})
    void tappingFindsASoreLiningBeforeLettingGoDoes(double lining) {
        Bedside patient = Bedside.healthy(30).shift("belly.left.lower.lining", lining);

        assertThat(patient.word("belly-tap-sides:left@lower")).isEqualTo("sore");
        assertThat(patient.word("belly-release-sides:left@lower")).isEqualTo("none");
    }

    @Test
    void generalPeritonitisIsABoardAllOver() {
        Bedside patient = with("peritonitis");

        for (String place : List.of("upper", "middle", "lower")) {
            assertThat(patient.word("belly-light-sides:right@" + place)).isEqualTo("rigid");
        }
        assertThat(patient.word("belly-light-middle@navel")).isEqualTo("rigid");
        assertThat(patient.word("belly-movement")).isEqualTo("still");
        assertThat(patient.word("bowel-sounds")).isEqualTo("absent");
    }

    /** McGee ch. 52 (figures from memory): tenderness and guarding at the lower right, a stretched psoas hurts. */
    @Test
    void appendicitisHurtsAtTheLowerRightOnly() {
        Bedside patient = with("appendicitis");

        assertThat(patient.word("belly-light-sides:right@lower")).isEqualTo("guarding");
        assertThat(patient.word("belly-light-sides:left@lower")).isEqualTo("soft");
        assertThat(patient.word("belly-tap-sides:right@lower")).isEqualTo("sharp");
        assertThat(patient.word("psoas-stretch:right")).isEqualTo("hurts");
        assertThat(patient.word("psoas-stretch:left")).isEqualTo("none");
        assertThat(patient.word("murphy")).isEqualTo("goes-on");
    }

    /** Text on the sign of Murphy: the breath in catches in cholecystitis. */
    @Test
    void cholecystitisCatchesTheBreath() {
        assertThat(with("cholecystitis").word("murphy")).isEqualTo("catches");
        assertThat(with("acute-hepatitis").word("murphy")).isEqualTo("goes-on");
    }

    /** From memory: a blocked bowel is full and tinkles; one at a standstill is full and silent. */
    @Test
    void theSoundsTellABlockFromAStandstill() {
        assertThat(with("bowel-obstruction").word("bowel-sounds")).isEqualTo("tinkling");
        assertThat(with("bowel-obstruction").word("belly-movement")).isEqualTo("waves");
        assertThat(with("ileus").word("bowel-sounds")).isEqualTo("absent");
        assertThat(with("ileus").word("belly-shape")).isEqualTo("full");
        assertThat(with("ileus").word("flank-note:right")).isEqualTo("resonant");
    }

    /** From memory: an inguinal hernia lies above and inside the tubercle, a femoral one below and outside. */
    @ParameterizedTest
    @CsvSource({"inguinal-hernia, inguinal, femoral, goes-back", "femoral-hernia, femoral, inguinal, stuck"})
    void eachHerniaComesAtItsOwnPlace(String condition, String at, String notAt, String code) {
        Bedside patient = Bedside.healthy(60).condition(condition, Side.LEFT);

        assertThat(patient.word("hernia-groin:left@" + at)).isEqualTo(code);
        assertThat(patient.word("hernia-groin:left@" + notAt)).isEqualTo("none");
        assertThat(patient.word("hernia-groin:right@" + at)).isEqualTo("none");
    }

    /** From memory: a kidney bounces between the hands; a full bladder is dull above the pubic bone. */
    @Test
    void kidneysAndBladderAreFoundWhereTheyLie() {
        assertThat(with("polycystic-kidneys").word("kidney-between-hands:right"))
                .isEqualTo("large-humps");
        assertThat(Bedside.healthy(40).condition("hydronephrosis", Side.LEFT).word("kidney-between-hands:left"))
                .isEqualTo("large-smooth");
        assertThat(with("urinary-retention").amount("bladder-percussion")).isCloseTo(12, within(2.0));
    }

    /** The bladder fills unfelt where both halves of its arc are lost, and in spinal shock (common practice, no source). */
    @ParameterizedTest
    @CsvSource({
        "cauda equina,                 3 days,  true",
        "cauda equina S1-S5 left half, 3 days,  false",
        "conus,                        3 days,  true",
        "spinal cord T8,               6 hours, true",
        "spinal cord T8 left half,     6 hours, false",
        "root S1 left,                 3 days,  false"
    })
    void theBladderFillsWhereNoSacralArcEmptiesIt(String site, String onset, boolean full) {
        Bedside patient = Bedside.healthy(50).lesion(site, 1, onset);

        assertThat(patient.amount("bladder-percussion") > 5).isEqualTo(full);
        assertThat(patient.sign("bladder-percussion").normal()).contains(!full);
    }

    /** Lesions of S2-S4 on both sides slacken the ring (common practice, no source). */
    @Test
    void theRingIsLaxWhereTheLowerRootsAreLost() {
        Bedside patient = Bedside.healthy(50);
        for (String root : List.of("S2", "S3", "S4")) {
            patient = patient.lesion("root " + root + " left", 1, "3 days")
                    .lesion("root " + root + " right", 1, "3 days");
        }
        assertThat(patient.word("rectum-grip")).isEqualTo("lax");
        assertThat(patient.meaning("rectum-grip")).isEqualTo("reflex-arc-root");
    }

    @Test
    void blackStoolsAreThoseOfBleeding() {
        assertThat(with("blood-loss").word("rectum-glove")).isEqualTo("black");
        assertThat(with("rectal-growth").word("rectum-glove")).isEqualTo("red");
    }

    @Test
    void moreFluidNeverBringsTheBorderOut() {
        double before = Double.MAX_VALUE;
        double shifted = -1;
        for (double litres = 0; litres <= 8; litres += 0.5) {
            var shown =
                    fluid(litres).show("shifting-dullness", java.util.Map.of()).measures();
            assertThat(shown.get(0).amount()).isLessThanOrEqualTo(before);
            before = shown.get(0).amount();
            double shift = fluid(litres).amount("shifting-dullness");
            assertThat(shift).isGreaterThanOrEqualTo(shifted);
            shifted = shift;
        }
    }

    @Test
    void moreSorenessNeverGivesASofterBelly() {
        double before = -1;
        for (double lining = 0; lining <= 1; lining += 0.1) {
            double amount = ((Finding.Graded) Bedside.healthy(40)
                            .shift("belly.middle.upper.lining", lining)
                            .sign("belly-light-middle@upper")
                            .finding())
                    .amount();
            assertThat(amount).isGreaterThanOrEqualTo(before);
            before = amount;
        }
    }

    /** X40 (GMC 2024): a chaperone is offered for a rectal examination, and the refusal is recorded. */
    @Test
    void everyFingerInTheRectumIsIntimateAndAsksForAChaperone() {
        assertThat(Bedside.REFERENCE.examination().manoeuvres())
                .filteredOn(m -> m.id().startsWith("rectum-"))
                .hasSize(3)
                .allSatisfy(m -> {
                    assertThat(m.intimacy()).isEqualTo("intimate");
                    assertThat(m.cautions()).contains("consent", "chaperone", "rectal");
                });
    }
}
