package org.manubrium.marking.credit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.manubrium.marking.key.MeansKey;
import org.manubrium.marking.key.Origin;

class SmallRulesTest {
    @Test
    void aChoiceIsRightOrNot() {
        assertThat(ChoiceRule.credit("extensor", "extensor").amount()).isEqualTo(1);
        assertThat(ChoiceRule.credit("flexor", "extensor").amount()).isZero();
    }

    @Test
    void aRelatedMeaningEarnsHalf() {
        MeansKey key = new MeansKey("root", "the root", List.of("nerve"), new Origin("argument", "design-value"));

        assertThat(MeansRule.credit("root", key).amount()).isEqualTo(1);
        assertThat(MeansRule.credit("nerve", key).amount()).isEqualTo(0.5);
        assertThat(MeansRule.credit("cord", key).amount()).isZero();
    }

    @Test
    void oneRightNextStepIsEnoughAndEveryWrongOneCosts() {
        List<String> right = List.of("mri", "physiotherapy");

        assertThat(NextRule.credit(List.of("mri"), right).amount()).isEqualTo(1);
        assertThat(NextRule.credit(List.of("mri", "physiotherapy"), right).amount())
                .isEqualTo(1);
        assertThat(NextRule.credit(List.of("mri", "x", "y", "z"), right).amount())
                .isEqualTo(0.25);
        assertThat(NextRule.credit(List.of("mri", "mri"), right).amount()).isEqualTo(0.5);
    }

    @Test
    void creditOutsideItsBoundsIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Credit(1.01, ""))
                .withMessage("credit must lie in 0..1, found 1.01");
        assertThatIllegalArgumentException().isThrownBy(() -> new Credit(Double.NaN, ""));
    }
}
