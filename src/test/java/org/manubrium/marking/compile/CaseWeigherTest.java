package org.manubrium.marking.compile;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.manubrium.marking.compile.CaseTruth.EssentialChoice;
import org.manubrium.reasoning.Verdict;
import org.manubrium.reasoning.Weighing;
import org.manubrium.reasoning.Worth;

class CaseWeigherTest {
    private static final CaseWeigher WEIGHER = Shipped.WEIGHER;

    @Test
    void whatTellsIsUsefulAndWhatOnlyEmbarrassesIsHarmful() {
        Weighing weighing = WEIGHER.weigh(Shipped.seventhRoot("left")).weighing();

        assertThat(weighing.worth("elbow-extension")).isIn(Worth.ESSENTIAL, Worth.USEFUL);
        assertThat(weighing.worth("acuity")).isEqualTo(Worth.UNNEEDED);
        assertThat(weighing.worth("anal-wink")).isEqualTo(Worth.HARMFUL);
        assertThat(weighing.verdicts()).extracting(Verdict::worth).contains(Worth.ESSENTIAL);
    }

    @Test
    void theEducatorsChoiceWinsWithItsReason() {
        Weighing weighing = WEIGHER.weigh(Shipped.seventhRoot(
                        "left",
                        new EssentialChoice("acuity", "", true, "it is asked for"),
                        new EssentialChoice("elbow-extension", "", false, "it hurts")))
                .weighing();

        assertThat(weighing.worth("acuity")).isEqualTo(Worth.ESSENTIAL);
        assertThat(weighing.worth("elbow-extension")).isEqualTo(Worth.UNNEEDED);
        assertThat(weighing.verdicts())
                .filteredOn(verdict -> verdict.manoeuvre().equals("elbow-extension"))
                .singleElement()
                .satisfies(verdict -> assertThat(verdict.reason()).contains("it hurts"));
    }
}
