package org.manubrium.marking.credit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;

class DifferentialRuleTest {
    private static final Diagnosis TRUTH = new Diagnosis("root", "root", List.of("radiculopathy"));

    private static double credit(String... named) {
        return DifferentialRule.credit(Guess.parse(List.of(named)), List.of(TRUTH))
                .amount();
    }

    @Test
    void theTruthNamedFirstEarnsAllAndLaterLess() {
        assertThat(credit("root")).isEqualTo(1);
        assertThat(credit("root", "nerve")).isEqualTo(1);
        assertThat(credit("nerve", "root")).isEqualTo(0.5);
        assertThat(credit("nerve", "cord", "root")).isEqualTo(1 / 3.0);
        assertThat(credit("nerve")).isZero();
    }

    @Test
    void anotherNameForTheTruthIsTheTruth() {
        assertThat(credit("radiculopathy=60", "nerve=40")).isEqualTo(1);
    }

    @Test
    void confidenceOutranksTheOrderAndTiesShare() {
        assertThat(credit("nerve=20", "root=80")).isEqualTo(1);
        assertThat(credit("root=50", "nerve=50")).isEqualTo(0.5);
    }

    @Test
    void namingEverythingEarnsLittle() {
        assertThat(credit("root=100", "a=100", "b=100", "c=100", "d=100", "e=100", "f=100"))
                .isEqualTo(1 / 7.0);
        assertThat(credit("a", "b", "c", "d", "e", "root")).isZero();
    }

    @Test
    void twoTruthsAreAveragedAndDoNotPushEachOtherBack() {
        Diagnosis other = new Diagnosis("thyroid", "thyroid", List.of());
        List<Diagnosis> both = List.of(TRUTH, other);

        assertThat(DifferentialRule.credit(Guess.parse(List.of("thyroid", "root")), both)
                        .amount())
                .isEqualTo(1);
        assertThat(DifferentialRule.credit(Guess.parse(List.of("root")), both).amount())
                .isEqualTo(0.5);
    }

    @Test
    void aConfidenceThatIsNoPercentageCountsAsNone() {
        assertThat(Guess.parse("root=maybe").confidence()).isEmpty();
        assertThat(Guess.parse("root=101").confidence()).isEmpty();
        assertThat(Guess.parse("root=70").confidence()).hasValue(70);
        assertThat(Guess.parse("root=70").diagnosis()).isEqualTo("root");
    }
}
