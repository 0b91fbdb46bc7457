package org.manubrium.marking.credit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.marking.key.ReadingKey.ScaleKey;

class OrdinalRuleTest {
    private static final List<String> GRADES = List.of("0", "1", "2", "3", "4", "5");

    private static ScaleKey key(int right, List<String> normal) {
        return new ScaleKey("power", "Power", true, GRADES, normal, String.valueOf(right));
    }

    /** Vectors computed in R 4.2.2 (off_by_one_half), on a scale on which every grade is normal. */
    @ParameterizedTest
    @CsvSource({
        "0,0,1", "1,0,.5", "2,0,0", "5,0,0", "0,1,.5", "1,1,1", "2,1,.5", "3,1,0", "1,2,.5", "2,2,1", "4,2,0", "3,3,1",
        "4,3,.5", "5,3,0", "3,4,.5", "5,4,.5", "4,5,.5", "5,5,1", "3,5,0"
    })
    void exactEarnsAllOneOffHalfAndFurtherNothing(int given, int right, double expected) {
        assertThat(OrdinalRule.credit(String.valueOf(given), key(right, GRADES)).amount())
                .isEqualTo(expected);
    }

    @Test
    void anAbnormalLevelForANormalOneEarnsNothingThoughOneOff() {
        assertThat(OrdinalRule.credit("4", key(5, List.of("5"))).amount()).isZero();
        assertThat(OrdinalRule.credit("5", key(4, List.of("5"))).amount()).isZero();
        assertThat(OrdinalRule.credit("3", key(4, List.of("5"))).amount()).isEqualTo(0.5);
    }

    @Test
    void creditFallsWithDistanceAndIsTheSameBothWays() {
        for (int right = 0; right <= 5; right++) {
            for (int given = 0; given <= 5; given++) {
                double credit =
                        OrdinalRule.credit("" + given, key(right, GRADES)).amount();
                assertThat(credit).isBetween(0.0, 1.0);
                assertThat(OrdinalRule.credit("" + right, key(given, GRADES)).amount())
                        .isEqualTo(credit);
                if (given > right && given < 5) {
                    assertThat(OrdinalRule.credit("" + (given + 1), key(right, GRADES))
                                    .amount())
                            .isLessThanOrEqualTo(credit);
                }
            }
        }
    }

    @Test
    void withoutAnOrderOnlyTheExactWordCounts() {
        ScaleKey toe = new ScaleKey("toe", "Toe", false, List.of("down", "none", "up"), List.of("down"), "up");

        assertThat(OrdinalRule.credit("up", toe).amount()).isEqualTo(1);
        assertThat(OrdinalRule.credit("none", toe).amount()).isZero();
    }

    @Test
    void aLevelThatIsNotOnTheScaleEarnsNothingAndSaysSo() {
        assertThat(OrdinalRule.credit("7", key(5, GRADES))).isEqualTo(Credit.none("\"7\" is no level of Power."));
    }
}
