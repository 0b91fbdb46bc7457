package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Side;

/** The spine and the back; the source stands beside each check. */
class BackSignsTest {
    private static Bedside with(String condition, Side side) {
        return Bedside.healthy(55).condition(condition, side);
    }

    private static Bedside root(String segment, double loss, String onset) {
        return Bedside.healthy(45).lesion("root " + segment + " right", loss, onset);
    }

    /** From memory: a raised straight leg pulls L5 and S1, a thigh drawn back L2 to L4; no arm root is pulled by either. */
    @ParameterizedTest
    @CsvSource({
        "L2, false, true",
        "L3, false, true",
        "L5, true, false",
        "S1, true, false",
        "C7, false, false",
        "S3, false, false"
    })
    void eachStretchPullsItsOwnRoots(String segment, boolean leg, boolean thigh) {
        Bedside patient = root(segment, 0.7, "6 weeks");

        assertThat(patient.sign("straight-leg-raise:right").normal()).contains(!leg);
        assertThat(patient.word("straight-leg-pain:right")).isEqualTo(leg ? "down-leg" : "tight");
        assertThat(patient.word("femoral-stretch:right")).isEqualTo(thigh ? "front-of-thigh" : "pulls");
        assertThat(patient.sign("straight-leg-raise:left").normal()).contains(true);
    }

    /** Common practice, no source: an old, healed sciatica leaves the raised leg free. */
    @ParameterizedTest
    @ValueSource(strings = {"5 years", "12 years", "old"})
    void anOldRootNoLongerHurts(String onset) {
        Bedside patient = root("S1", 1, onset);

        assertThat(patient.sign("straight-leg-raise:right").normal()).contains(true);
        assertThat(patient.word("straight-leg-pain:right")).isEqualTo("tight");
        assertThat(with("old-sciatica", Side.LEFT)
                        .sign("straight-leg-raise:left")
                        .normal())
                .contains(true);
    }

    /** From memory: only severe compression is felt when the other leg is raised. */
    @Test
    void aVerySoreRootIsFeltFromTheOtherLeg() {
        assertThat(root("L5", 0.9, "2 weeks").word("straight-leg-pain:left")).isEqualTo("other-leg");
        assertThat(root("L5", 0.9, "2 weeks").sign("straight-leg-raise:left").normal())
                .contains(false);
        assertThat(root("L5", 0.6, "2 weeks").word("straight-leg-pain:left")).isEqualTo("tight");
    }

    @Test
    void theRootItselfIsNamedAsTheSite() {
        var sign = root("L5", 0.8, "6 weeks").sign("straight-leg-raise:right");

        assertThat(sign.meaning().term()).isEqualTo("root-pulled");
        assertThat(sign.meaning().sites()).extracting(Object::toString).containsExactly("root L5 right");
    }

    @Test
    void moreLossNeverLetsTheLegComeHigher() {
        double before = 180;
        for (int tenths = 0; tenths <= 10; tenths++) {
            double angle = root("S1", tenths / 10.0, "6 weeks").amount("straight-leg-raise:right");
            assertThat(angle).isLessThanOrEqualTo(before);
            before = angle;
        }
    }

    /** A prolapsed disc at S1 takes the ankle jerk as well (McGee, ch. 64, by the root itself). */
    @Test
    void aProlapsedDiscShowsInLegReflexAndLoins() {
        Bedside patient = with("disc-prolapse", Side.LEFT);

        assertThat(patient.word("straight-leg-pain:left")).isEqualTo("down-leg");
        assertThat(patient.sign("ankle-reflex:left").normal()).contains(false);
        assertThat(patient.sign("loins-opening").normal()).contains(false);
        assertThat(patient.word("back-muscle:left")).isEqualTo("held-tight");
        assertThat(with("mechanical-back-pain", Side.NONE).word("straight-leg-pain:left"))
                .isEqualTo("tight");
    }

    /** Common practice, no source: run the fingers down: a step or a bump suggests a collapsed vertebra. */
    @Test
    void fingersFindACollapsedVertebraWhereItIs() {
        Bedside patient = with("vertebral-collapse", Side.NONE);

        assertThat(patient.word("spine-fingers@chest")).isEqualTo("stands-out");
        assertThat(patient.word("spine-fingers@loins")).isEqualTo("even");
        assertThat(patient.word("spine-look")).isEqualTo("bump");
        assertThat(patient.word("spine-tap@chest")).isEqualTo("sore");
        assertThat(with("slipped-vertebra", Side.NONE).word("spine-fingers@loins"))
                .isEqualTo("drops-in");
        assertThat(with("osteoporotic-round-back", Side.NONE).word("spine-look"))
                .isEqualTo("rounded");
        assertThat(with("osteoporotic-round-back", Side.NONE)
                        .sign("head-to-wall")
                        .normal())
                .contains(false);
    }

    /** From memory: fused joints stop the loins, the neck, the chest and the head at the wall. */
    @Test
    void ankylosingSpondylitisStiffensTheWholeSpine() {
        Bedside patient = with("ankylosing-spondylitis", Side.NONE);

        assertThat(patient.amount("loins-opening")).isLessThan(4);
        assertThat(patient.sign("neck-turning:left").normal()).contains(false);
        assertThat(patient.sign("chest-expansion-tape").normal()).contains(false);
        assertThat(patient.word("sacroiliac-press:right")).isEqualTo("sore");
    }

    @Test
    void aBowedSpineRaisesTheRibsOfItsOuterSide() {
        Bedside patient = with("scoliosis", Side.RIGHT);

        assertThat(patient.word("spine-look")).isEqualTo("bows-right");
        assertThat(patient.mirrored().word("spine-look")).isEqualTo("bows-left");
        assertThat(patient.amount("rib-hump:right")).isGreaterThan(10);
        assertThat(patient.amount("rib-hump:left")).isZero();
        assertThat(with("kyphoscoliosis", Side.LEFT).word("spine-look")).isEqualTo("bows-left");
    }

    @Test
    void aKidneyIsSoreOnItsOwnSide() {
        Bedside patient = with("pyelonephritis", Side.LEFT);

        assertThat(patient.word("loin-tap:left")).isEqualTo("sharp");
        assertThat(patient.word("loin-tap:right")).isEqualTo("none");
    }

    /** Common practice, no source: in bed the water of a failing right heart lies over the sacrum. */
    @Test
    void waterLiesOverTheSacrum() {
        assertThat(with("right-heart-failure", Side.NONE).amount("sacral-oedema"))
                .isGreaterThan(4);
        assertThat(Bedside.healthy(80).amount("sacral-oedema")).isZero();
    }
}
