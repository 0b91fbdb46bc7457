package org.manubrium.marking.credit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.ForAll;
import org.manubrium.marking.key.SiteKey;
import org.manubrium.marking.key.SiteKey.Near;

class SiteRuleTest {
    private static SiteKey key(String place, String... near) {
        return new SiteKey(
                place,
                List.of(near).stream()
                        .map(n -> new Near(SiteKey.words(n.substring(2)), n.charAt(0) - '0'))
                        .toList(),
                List.of());
    }

    private static final SiteKey SEVENTH = key(
            "root C7 left", "0 root C7 left", "1 root C6 left", "1 root C8 left", "2 root C5 left", "2 root T1 left");

    /** Vectors computed in R 4.2.2 (linear, half-width 3). */
    @ParameterizedTest
    @CsvSource({
        "C7, 1",
        "C8, 0.666666666666667",
        "C6, 0.666666666666667",
        "C5, 0.333333333333333",
        "T1, 0.333333333333333",
        "T2, 0"
    })
    void aThirdIsLostForEveryLevel(String level, double expected) {
        assertThat(SiteRule.credit(List.of("root " + level + " left"), List.of(SEVENTH))
                        .amount())
                .isCloseTo(expected, within(1e-12));
    }

    @Test
    void theWrongSideEarnsNothing() {
        assertThat(SiteRule.credit(List.of("root C7 right"), List.of(SEVENTH)).amount())
                .isZero();
    }

    @Test
    void theOrderOfTheWordsDoesNotMatter() {
        assertThat(SiteRule.credit(List.of("Left root C7"), List.of(SEVENTH)).amount())
                .isEqualTo(1);
    }

    @Test
    void namingManyPlacesSharesTheCredit() {
        List<String> many = List.of("root C5 left", "root C6 left", "root C7 left", "root C8 left", "root T1 left");

        assertThat(SiteRule.credit(many, List.of(SEVENTH)).amount()).isEqualTo(0.2);
    }

    @Test
    void twoLesionsAskForTwoPlacesAndOneAnswerIsUsedOnce() {
        SiteKey eye = key("optic nerve right", "0 optic nerve right");

        assertThat(SiteRule.credit(List.of("optic nerve right", "root C7 left"), List.of(SEVENTH, eye))
                        .amount())
                .isEqualTo(1);
        assertThat(SiteRule.credit(List.of("root C7 left"), List.of(SEVENTH, eye))
                        .amount())
                .isEqualTo(0.5);
        assertThat(SiteRule.credit(List.of("root C7 left"), List.of(SEVENTH, SEVENTH))
                        .amount())
                .isEqualTo(0.5);
    }

    private static final SiteKey EIGHTH =
            key("root C8 left", "0 root C8 left", "1 root C7 left", "1 root T1 left", "2 root C6 left");

    private static double earned(List<String> given) {
        return SiteRule.credit(given, List.of(SEVENTH, EIGHTH)).amount();
    }

    /** C6 for C7 and C8 for itself: two thirds and one, over two. */
    @Test
    void anAnswerIsUsedWhereItEarnsMost() {
        assertThat(earned(List.of("root C8 left", "root C6 left"))).isCloseTo(5 / 6.0, within(1e-12));
        assertThat(earned(List.of("root C6 left", "root C8 left"))).isCloseTo(5 / 6.0, within(1e-12));
    }

    @Test
    void creditIsBoundedWhateverTheOrderAndAWrongPlaceMoreNeverEarnsMore() {
        List<String> places = List.of(
                "root C5 left", "root C6 left", "root C7 left", "root C8 left", "root T1 left", "root C7 right");
        ForAll.seeds(300, random -> {
            List<String> given = new ArrayList<>(places);
            Collections.shuffle(given, new Random(random.nextLong()));
            List<String> some = given.subList(0, 1 + random.nextInt(4));
            List<String> other = new ArrayList<>(some);
            Collections.reverse(other);
            List<String> more = new ArrayList<>(some);
            more.add("optic nerve right");

            assertThat(earned(some)).isBetween(0.0, 1.0).isCloseTo(earned(other), within(1e-12));
            assertThat(earned(more)).isLessThanOrEqualTo(earned(some));
        });
    }
}
