package org.manubrium.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LesionTest {
    private static final Onset WEEKS = Onset.parse("6 weeks").orElseThrow();
    private static final Site ROOT = Site.at("root", Segment.C7, Side.LEFT);

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN, Double.POSITIVE_INFINITY})
    void lossOutsideItsRangeIsRefused(double loss) {
        assertThatThrownBy(() -> new Lesion(ROOT, loss, WEEKS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("loss of root C7 left must lie in 0..1, found " + loss);
    }

    @Test
    void mirroringTwiceGivesTheLesionBack() {
        Lesion lesion = new Lesion(ROOT, 0.8, WEEKS);

        assertThat(lesion.mirrored().site()).hasToString("root C7 right");
        assertThat(lesion.mirrored().mirrored()).isEqualTo(lesion);
        assertThat(lesion.withLoss(0.3).loss()).isEqualTo(0.3);
    }

    @Test
    void aSiteWithoutLevelCoversAllItsLevels() {
        Site nerve = Site.of("radial nerve", Side.LEFT);
        Site axilla = Site.at("radial nerve", Side.LEFT, "axilla");

        assertThat(nerve.covers(axilla)).isTrue();
        assertThat(axilla.covers(nerve)).isFalse();
        assertThat(axilla.covers(Site.at("radial nerve", Side.LEFT, "spiral groove")))
                .isFalse();
        assertThat(nerve.covers(axilla.mirrored())).isFalse();
        assertThat(nerve.covers(Site.of("ulnar nerve", Side.LEFT))).isFalse();
    }

    @Test
    void aSiteWithoutSegmentCoversAllItsSegments() {
        assertThat(Site.of("root", Side.LEFT).covers(ROOT)).isTrue();
        assertThat(ROOT.covers(Site.at("root", Segment.C8, Side.LEFT))).isFalse();
    }

    @Test
    void aSiteIsWrittenAsAClinicianSaysIt() {
        assertThat(Site.at("radial nerve", Side.LEFT, "spiral groove"))
                .hasToString("radial nerve left at spiral groove");
        assertThat(Site.at("anterior commissure", Segment.C6, Side.NONE)).hasToString("anterior commissure C6");
    }
}
