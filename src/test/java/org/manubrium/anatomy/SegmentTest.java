package org.manubrium.anatomy;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SegmentTest {
    @Test
    void thirtySegmentsRunFromTheHeadDown() {
        assertThat(Segment.all()).hasSize(30).startsWith(Segment.C1).endsWith(Segment.S5);
        assertThat(Segment.C8.down(1)).contains(Segment.T1);
        assertThat(Segment.L1.down(-1)).contains(Segment.T12);
    }

    @Test
    void thereIsNothingAboveTheFirstOrBelowTheLast() {
        assertThat(Segment.C1.down(-1)).isEmpty();
        assertThat(Segment.S4.down(2)).isEmpty();
    }

    @Test
    void aStretchHoldsBothItsEnds() {
        assertThat(Segment.C7.to(Segment.T1)).containsExactly(Segment.C7, Segment.C8, Segment.T1);
        assertThat(Segment.L4.to(Segment.L4)).containsExactly(Segment.L4);
    }

    @Test
    void aStretchUpwardsIsEmpty() {
        assertThat(Segment.T1.to(Segment.C7)).isEmpty();
    }

    @Test
    void namesAreReadInEitherCase() {
        assertThat(Segment.of("t12")).contains(Segment.T12);
        assertThat(Segment.of("C9")).isEmpty();
        assertThat(Segment.of("")).isEmpty();
    }
}
