package org.manubrium.reasoning.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.tables.Tables;

/** Here the ratio is the source's and the chance follows by arithmetic; {@link WorkedExamplesTest} has printed chances. */
class OddsTest {
    private static final List<LikelihoodRatio> RATIOS =
            Tables.shipped().reasoning().ratios();

    private static LikelihoodRatio ratio(String id) {
        return RATIOS.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
    }

    /** A common teaching example, from memory, printed as 7.8 per cent: 1 per cent, sensitivity 80, false alarms 9.6. */
    @Test
    void eightyPerCentOfCancersAndTenPerCentFalseAlarmsGiveEightInAHundred() {
        assertThat(Odds.after(0.01, Odds.positive(0.8, 1 - 0.096))).isEqualTo(0.078, within(0.001));
    }

    /** X76: Grimes & Schulz 2005, Lancet 365:1500, for the arithmetic; Wong 2009, JAMA 301:309, for the ratio. */
    @Test
    void dullnessRaisesAnEffusionFromTwentyToSixtyEightInAHundred() {
        assertThat(Odds.after(0.2, ratio("LR020").positive().orElseThrow())).isEqualTo(0.685, within(0.001));
    }

    /** X16: Esene 2012, Surg Neurol Int 3:104: an accuracy, of which no likelihood ratio can be made. */
    @ParameterizedTest
    @CsvSource({"LR150-hamstring, 79", "LR150-knee, 86", "LR150-ankle, 67"})
    void theAccuracyOfAReflexForTheLevelOfADiscIsToldAndGivesNoRatio(String id, int perCent) {
        LikelihoodRatio told = ratio(id);

        assertThat(told.note()).contains(perCent + " per cent");
        assertThat(told.source()).isEqualTo("esene-2012");
        assertThat(told.positive()).isEmpty();
        assertThat(told.share()).isEmpty();
    }

    /**
     * The ratios are those of the sources named in the table; the chances afterwards are arithmetic, by hand.
     * X41: Lederle & Simel 1999. X46: Indra 2004. X61: Bagai 2006. X71: Wang 2005. X72: Wong 2009. X73: Udell 2012.
     * X42: Khan 2006. X56: Roy 2007. X74: McGee 1999. X78: Isaza Jaramillo 2014. X09: McGee, appendix.
     */
    @ParameterizedTest
    @CsvSource({
        "LR111, yes, 0.05, 0.387",
        "LR111, no, 0.05, 0.0365",
        "LR181, yes, 0.18, 0.460",
        "LR012, no, 0.30, 0.0127",
        "LR012, yes, 0.30, 0.723",
        "LR046, yes, 0.50, 0.917",
        "LR021, no, 0.20, 0.0499",
        "LR081, yes, 0.20, 0.643",
        "LR082, yes, 0.20, 0.518",
        "LR109, yes, 0.25, 0.651",
        "LR109, no, 0.25, 0.115",
        "LR072, no, 0.50, 0.0291",
        "LR076, yes, 0.10, 0.842",
        "LR119, no, 0.50, 0.333",
        "LR123, yes, 0.50, 0.902",
        "LR008, yes, 0.50, 0.960",
        "LR008, no, 0.50, 0.0909"
    })
    void publishedRatiosGiveTheseChances(String id, String present, double before, double after) {
        OptionalDouble factor =
                present.equals("yes") ? ratio(id).positive() : ratio(id).negative();

        assertThat(Odds.after(before, factor.orElseThrow())).isEqualTo(after, within(0.001));
    }

    /** X41: a palpation that finds nothing does not exclude an aneurysm; over 3 per cent are left of 5. */
    @Test
    void aNormalPalpationLeavesThreeInAHundredAneurysms() {
        assertThat(Odds.after(0.05, ratio("LR111").negative().orElseThrow())).isGreaterThan(0.03);
    }

    /** X46: Indra 2004: the best single sign leaves it less likely than not. */
    @Test
    void aSlowAnkleReflexAloneLeavesHypothyroidismUnlikelierThanNot() {
        assertThat(Odds.after(0.18, ratio("LR181").positive().orElseThrow())).isLessThan(0.5);
    }

    /** X77: Isaza Jaramillo 2014: reported as 51.8 from data not rounded; 50.8 from the rounded shares; within 2 per cent. */
    @Test
    void ratiosFollowFromSensitivityAndSpecificity() {
        LikelihoodRatio babinski = ratio("LR119");
        double sensitivity = babinski.sensitivity().orElseThrow();
        double specificity = babinski.specificity().orElseThrow();

        assertThat(Odds.positive(sensitivity, specificity)).isEqualTo(50.8, within(0.01));
        assertThat(Odds.positive(sensitivity, specificity) / babinski.positive().orElseThrow())
                .isEqualTo(1, within(0.02));
        assertThat(Odds.negative(sensitivity, specificity)).isEqualTo(0.50, within(0.005));
    }

    @Test
    void sensitivityFollowsFromBothRatios() {
        assertThat(Odds.sensitivity(Odds.positive(0.73, 0.91), Odds.negative(0.73, 0.91)))
                .isEqualTo(0.73, within(1e-9));
    }

    @Test
    void certaintyStaysCertain() {
        assertThat(Odds.after(0, 50)).isZero();
        assertThat(Odds.after(1, 0.01)).isEqualTo(1);
        assertThat(Odds.after(0.3, Double.POSITIVE_INFINITY)).isEqualTo(1);
    }

    @Test
    void chancesAndRatiosOutOfRangeAreRefused() {
        assertThatThrownBy(() -> Odds.after(1.2, 3)).hasMessageContaining("1.2");
        assertThatThrownBy(() -> Odds.after(0.2, -1)).hasMessageContaining("-1");
        assertThatThrownBy(() -> Odds.after(Double.NaN, 1)).hasMessageContaining("NaN");
    }

    @Test
    void aRatioIsSaidInNumbersOfPeople() {
        assertThat(People.said(ratio("LR020"), 0.2, true))
                .isEqualTo("Of 100 such people 20 have pleural effusion. Of 100 of them with this finding "
                        + "(dullness to percussion) it is 69.");
        assertThat(People.said(ratio("LR020"), 0.2, false))
                .endsWith("without this finding (dullness to percussion) it is 7.");
        assertThat(People.said(ratio("LR012"), 0.01, false)).endsWith("it is fewer than 1.");
    }

    @Test
    void whatWasNotPublishedIsNotSaid() {
        assertThat(People.said(ratio("LR081"), 0.2, false)).isEmpty();
    }
}
