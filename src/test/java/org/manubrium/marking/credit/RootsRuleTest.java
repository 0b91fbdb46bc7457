package org.manubrium.marking.credit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.ForAll;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.SegmentSet;

class RootsRuleTest {
    private static SegmentSet set(String text) {
        return text.isEmpty()
                ? new SegmentSet(Set.of())
                : SegmentSet.parse(text).orElseThrow();
    }

    private static double credit(String given, String... accepted) {
        return RootsRule.credit(
                        set(given),
                        List.of(accepted).stream().map(RootsRuleTest::set).toList(),
                        false)
                .amount();
    }

    /** Vectors computed in R 4.2.2: Jaccard index of response and key. */
    @ParameterizedTest
    @CsvSource({
        "C7, 'C7,C8', 0.5",
        "'C7,C8', 'C7,C8', 1",
        "'C6,C7', 'C7,C8', 0.333333333333333",
        "'C6,C7,C8', 'C7,C8', 0.666666666666667",
        "L5, 'C7,C8', 0",
        "'', 'C7,C8', 0",
        "'C5,C6,C7,C8,T1', 'C7,C8', 0.4",
        "C7, C7, 1"
    })
    void creditIsTheJaccardIndex(String given, String key, double expected) {
        assertThat(credit(given, key)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void theBestOfTheAlternativesCounts() {
        assertThat(credit("C8", "C7", "C8")).isEqualTo(1);
    }

    @Test
    void noRootIsRightWhereNoRootIsRight() {
        assertThat(credit("", "")).isEqualTo(1);
        assertThat(credit("C7", "")).isZero();
    }

    @Test
    void creditIsBoundedAndTheSameWhicheverIsTheKey() {
        ForAll.seeds(500, random -> {
            SegmentSet one = random(random);
            SegmentSet other = random(random);
            double credit = RootsRule.credit(one, List.of(other), false).amount();

            assertThat(credit).isBetween(0.0, 1.0);
            assertThat(RootsRule.credit(other, List.of(one), false).amount()).isEqualTo(credit);
        });
    }

    @Test
    void aWrongRootMoreNeverEarnsMoreAndARightOneNeverLess() {
        ForAll.seeds(500, random -> {
            SegmentSet key = random(random);
            SegmentSet given = random(random);
            Segment more = Segment.all().get(random.nextInt(30));
            Set<Segment> added = given.segments().stream().collect(Collectors.toSet());
            if (!added.add(more)) {
                return;
            }
            double before = RootsRule.credit(given, List.of(key), false).amount();
            double after =
                    RootsRule.credit(SegmentSet.of(added), List.of(key), false).amount();

            if (key.segments().contains(more)) {
                assertThat(after).isGreaterThanOrEqualTo(before);
            } else {
                assertThat(after).isLessThanOrEqualTo(before);
            }
        });
    }

    private static SegmentSet random(RandomGenerator random) {
        return SegmentSet.of(random.ints(random.nextInt(5), 4, 12)
                .mapToObj(Segment.all()::get)
                .collect(Collectors.toSet()));
    }
}
