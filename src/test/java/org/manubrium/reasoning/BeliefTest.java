package org.manubrium.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BeliefTest {
    private static final double CLOSE = 1e-12;

    @Test
    void oneFindingGivesBayesChances() {
        Belief after =
                new Tiny(0.1, 0.2, 0.8).step("a", 5, 1, 0).evidence().start().see(0, 1);

        assertThat(after.chances()[0]).isEqualTo(0.2 * 0.9 / (0.2 * 0.9 + 0.8 * 0.1), within(CLOSE));
    }

    @Test
    void fourEqualChancesAreTwoBits() {
        assertThat(new Tiny(0.1, 0.25, 0.25, 0.25, 0.25).evidence().start().bits())
                .isEqualTo(2, within(CLOSE));
    }

    /** Shannon: a sure sign that halves two equal chances tells one bit; a symmetrical channel 1 - H(e). */
    @Test
    void informationOfASignIsThatOfItsChannel() {
        assertThat(new Tiny(0, 0.5, 0.5).step("a", 5, 1, 0).evidence().start().information(0))
                .isEqualTo(1, within(CLOSE));
        double noise = 0.11;
        double kept = 1 - Bits.of(new double[] {noise, 1 - noise});
        assertThat(new Tiny(noise, 0.5, 0.5)
                        .step("a", 5, 1, 0)
                        .evidence()
                        .start()
                        .information(0))
                .isEqualTo(kept, within(CLOSE));
    }

    @Test
    void informationIsWhatTheUncertaintyIsExpectedToFall() {
        Belief start =
                new Tiny(0.07, 0.5, 0.3, 0.2).step("a", 5, 1, 0, 1).evidence().start();
        double[] outcomes = start.outcomes(0);
        double expected = outcomes[0] * start.see(0, 0).bits()
                + outcomes[1] * start.see(0, 1).bits();

        assertThat(start.information(0)).isEqualTo(start.bits() - expected, within(CLOSE));
    }

    @Test
    void theSameStepAgainTellsNothing() {
        Belief once = new Tiny(0.2, 0.5, 0.3, 0.2)
                .step("a", 5, 1, 0, 1)
                .evidence()
                .start()
                .see(0, 1);

        assertThat(once.information(0)).isEqualTo(0, within(CLOSE));
        assertThat(once.see(0, 1).chances()).containsExactly(once.chances(), within(CLOSE));
    }

    /** X75: Holleman & Simel: a fifth and a ratio of 4 give a half; entered twice it is still a half and not 80 per cent. */
    @Test
    void twoFindingsThatAlwaysGoTogetherCountOnce() {
        Belief start = new Tiny(0.2, 0.2, 0.8)
                .step("pain and temperature", 5, 1, 0)
                .step("pain and temperature", 5, 1, 0)
                .evidence()
                .start();

        assertThat(start.see(0, 1).chances()[0]).isEqualTo(0.5, within(CLOSE));
        assertThat(start.see(0, 1).see(1, 1).chances()[0]).isEqualTo(0.5, within(CLOSE));
        assertThat(start.see(0, 1).information(1)).isEqualTo(0, within(CLOSE));
    }

    @Test
    void twoSignsReadApartBothCount() {
        Belief start = new Tiny(0.2, 0.2, 0.8)
                .step("a", 5, 1, 0)
                .step("b", 5, 1, 0)
                .evidence()
                .start();

        assertThat(start.see(0, 1).see(1, 1).chances()[0]).isEqualTo(0.8, within(CLOSE));
    }

    @Test
    void theOrderOfFindingsDoesNotMatter() {
        Belief start = new Tiny(0.1, 0.5, 0.3, 0.2)
                .step("a", 5, 1, 0, 1)
                .step("b", 5, 1, 1, 0)
                .step("a", 5, 0, 0, 1)
                .evidence()
                .start();

        assertThat(start.see(0, 1).see(1, 0).see(2, 1).chances())
                .containsExactly(start.see(2, 1).see(1, 0).see(0, 1).chances(), within(1e-9));
    }

    /** Two steps that tell nothing alone and everything together: no way of looking one step ahead begins them. */
    @Test
    void stepsThatTellOnlyTogetherTellNothingAlone() {
        Evidence evidence = new Evidence(Xor.weighing());

        assertThat(evidence.start().information(0)).isEqualTo(0, within(CLOSE));
        assertThat(evidence.start().information(1)).isEqualTo(0, within(CLOSE));
        assertThat(evidence.start().see(0, 1).information(1)).isEqualTo(1, within(CLOSE));
    }

    @Test
    void aReadingThatContradictsAnEarlierOneOfItsSignChangesNothing() {
        Belief once = new Tiny(0.1, 0.4, 0.6)
                .step("a", 5, 1, 0)
                .step("a", 5, 1, 0)
                .evidence()
                .start()
                .see(0, 1);

        assertThat(once.see(1, 0).chances()).containsExactly(once.chances(), within(1e-9));
    }
}
