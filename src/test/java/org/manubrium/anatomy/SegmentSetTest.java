package org.manubrium.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SegmentSetTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "C7|C7",
                "c6-c8|C6-C8",
                "L5–S2|L5-S2",
                "C6, C7|C6-C7",
                "C5 C7|C5, C7",
                " S1 |S1",
                "C7,C6,C7|C6-C7",
                "C5-C6 T1|C5, C6, T1"
            })
    void rangesAndListsAreReadAndWrittenTheShortWay(String text, String written) {
        assertThat(SegmentSet.parse(text).map(SegmentSet::toString)).contains(written);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "C9", "C6-", "C6-C7-C8", "C8-C6", "C7 and more", "-C7"})
    void anythingElseIsNoSet(String text) {
        assertThat(SegmentSet.parse(text)).isEmpty();
    }

    @Test
    void theEmptySetIsSaidInWords() {
        assertThat(SegmentSet.of(List.of())).hasToString("no root");
    }

    @Test
    void overlapIsSharedOverAll() {
        assertThat(overlap("C6-C8", "C7")).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(overlap("C6-C7", "C7-C8")).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(overlap("C5-T1", "C7")).isCloseTo(0.2, within(1e-12));
        assertThat(overlap("L4", "S1")).isZero();
    }

    @Test
    void twoEmptySetsAgreeAndOneAgreesWithNothing() {
        SegmentSet none = SegmentSet.of(List.of());

        assertThat(none.overlap(none)).isEqualTo(1);
        assertThat(none.overlap(set("C7"))).isZero();
    }

    @Test
    void everySetReadsBackAsItIsWritten() {
        Random random = new Random(20240607);
        for (int i = 0; i < 500; i++) {
            EnumSet<Segment> members = EnumSet.noneOf(Segment.class);
            Segment.all().stream().filter(s -> random.nextInt(4) == 0).forEach(members::add);
            members.add(Segment.C7);
            SegmentSet set = SegmentSet.of(members);

            assertThat(SegmentSet.parse(set.toString())).contains(set);
        }
    }

    @Test
    void aSetDoesNotFollowTheCollectionItWasMadeFrom() {
        EnumSet<Segment> mutable = EnumSet.of(Segment.C7);
        SegmentSet set = new SegmentSet(mutable);
        mutable.add(Segment.C8);

        assertThat(set).hasToString("C7");
    }

    private static double overlap(String one, String other) {
        double there = set(one).overlap(set(other));
        assertThat(set(other).overlap(set(one))).isEqualTo(there);
        return there;
    }

    private static SegmentSet set(String text) {
        return SegmentSet.parse(text).orElseThrow();
    }
}
