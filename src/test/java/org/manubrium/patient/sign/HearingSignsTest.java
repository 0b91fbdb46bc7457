package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Variation;

/** What the texts say of voice and fork, read off ears that have nothing but lesions. */
class HearingSignsTest {
    private static final Bedside HEALTHY = Bedside.healthy(40);

    /** Tuning-fork results text; Raman 2012; the rows of both ears are remembered. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            middle ear right, 0.6,                            to-right, bone, air,  missed, heard
            middle ear left, 0.6,                             to-left,  air,  bone, heard,  missed
            cochlea right, 0.35,                              to-left,  air,  air,  missed, heard
            cochlea left, 0.35,                               to-right, air,  air,  heard,  missed
            cochlea right, 1,                                 to-left,  bone, air,  missed, heard
            cochlear nerve left, 1,                           to-right, air,  bone, heard,  missed
            middle ear both, 0.7,                             middle,   bone, bone, missed, missed
            cochlea both, 0.4,                                middle,   air,  air,  missed, missed
            """)
    @DisplayName("X58 X59 X60 voice and forks by kind and side of loss")
    void voiceAndForksFollowTheKindOfLoss(
            String where,
            double loss,
            String weber,
            String rinneRight,
            String rinneLeft,
            String voiceRight,
            String voiceLeft) {
        Bedside patient = HEALTHY.lesion(where, loss, "6 weeks");

        assertThat(patient.word("weber-test")).isEqualTo(weber);
        assertThat(patient.word("rinne-test:right")).isEqualTo(rinneRight);
        assertThat(patient.word("rinne-test:left")).isEqualTo(rinneLeft);
        assertThat(patient.word("whispered-voice:right")).isEqualTo(voiceRight);
        assertThat(patient.word("whispered-voice:left")).isEqualTo(voiceLeft);
    }

    /** Browning 1989: 48 % of gaps of 15 dB, 69 % of 20, 87 % of 25 and 95 % of 30 turn the test. */
    @ParameterizedTest
    @CsvSource({"15, 0.48", "20, 0.69", "25, 0.87", "30, 0.95"})
    void aGapTurnsTheRinneAsOftenAsMeasured(double gap, double share) {
        int turned = 0;
        for (int seed = 1; seed <= 400; seed++) {
            Bedside person = Bedside.person(40, Variation.of(seed)).lesion("middle ear left", gap / 60, "1 year");
            turned += person.word("rinne-test:left").equals("bone") ? 1 : 0;
        }
        assertThat(turned / 400.0).isBetween(share - 0.08, share + 0.08);
    }

    /** Tuning-fork results text: a gap under about 20 dB may keep the Rinne positive while the Weber already moves. */
    @Test
    void theWeberMovesBeforeTheRinneTurns() {
        Bedside slight = HEALTHY.lesion("middle ear right", 0.2, "6 weeks");

        assertThat(slight.word("weber-test")).isEqualTo("to-right");
        assertThat(slight.word("rinne-test:right")).isEqualTo("air");
    }

    /** Tuning-fork results text; Raman 2012, Indian J Otol 18:212. */
    @Test
    @DisplayName("X60 in a dead ear the bone is heard by the other ear: rubbing that shut makes it silent")
    void maskingShowsThatTheDeadEarHearsNothing() {
        Bedside dead = HEALTHY.lesion("cochlea right", 1, "2 weeks");

        assertThat(dead.sign("rinne-test:right", Map.of("rinne-other-ear", "masked"))
                        .reading()
                        .toString())
                .contains("not-heard");
        assertThat(dead.meaning("rinne-test:right")).isEqualTo("bone-heard-across");
        assertThat(dead.meaning("weber-test")).isEqualTo("inner-ear-loss");
    }

    /** Raman 2012: a false negative is seen once the loss is about 70 dB or worse. */
    @Test
    void noFalseNegativeInAModerateLoss() {
        for (int seed = 1; seed <= 200; seed++) {
            Bedside person = Bedside.person(40, Variation.of(seed));
            assertThat(person.lesion("cochlea right", 45 / 115.0, "1 year").word("rinne-test:right"))
                    .isEqualTo("air");
            assertThat(person.lesion("cochlea right", 80 / 115.0, "1 year").word("rinne-test:right"))
                    .isEqualTo("bone");
        }
    }

    @Test
    void anEarLeftOpenHearsForTheOther() {
        Bedside dead = HEALTHY.lesion("cochlea right", 1, "2 weeks");

        assertThat(dead.word("whispered-voice:right")).isEqualTo("missed");
        assertThat(dead.sign("whispered-voice:right", Map.of("other-ear", "open"))
                        .reading()
                        .toString())
                .contains("heard");
    }

    @ParameterizedTest
    @CsvSource({
        "ear-wax, wax, canal-blocked",
        "middle-ear-fluid, fluid, drum-fluid",
        "middle-ear-infection, red, drum-inflamed",
        "drum-perforation, hole, drum-open",
        "drum-scars, chalk, old-nothing-new",
        "fixed-stapes, normal, nothing-abnormal"
    })
    void theDrumShowsWhatLiesInTheEar(String condition, String seen, String means) {
        Bedside patient = HEALTHY.condition(condition, Side.LEFT);

        assertThat(patient.word("ear-drum:left")).isEqualTo(seen);
        assertThat(patient.meaning("ear-drum:left")).isEqualTo(means);
        assertThat(patient.word("ear-drum:right")).isEqualTo("normal");
    }

    @Test
    void waxHidesTheDrumBehindIt() {
        var alone = HEALTHY.shift("ear.right.wax", 1).show("ear-drum:right", Map.of());
        var before =
                HEALTHY.shift("ear.right.wax", 1).shift("ear.right.hole", 0.4).show("ear-drum:right", Map.of());

        assertThat(before).isEqualTo(alone);
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 50, 90})
    void healthyEarsAreNormalInEveryPerson(int age) {
        for (int seed = 1; seed <= 100; seed++) {
            assertThat(Bedside.person(age, Variation.of(seed)).system("ears"))
                    .as("seed %d", seed)
                    .isNotEmpty()
                    .allSatisfy(sign -> assertThat(sign.normal()).contains(true));
        }
    }
}
