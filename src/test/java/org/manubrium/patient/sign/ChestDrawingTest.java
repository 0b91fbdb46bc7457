package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Side;

/** What is drawn of the outside of the chest is what was shown, measured on the drawing in a real browser. */
class ChestDrawingTest extends AtTheBoard {
    /** The cut across a chest goes round without a spur; its widest and deepest are the widths that are shown. */
    @ParameterizedTest
    @ValueSource(strings = {"kyphoscoliosis", "emphysema", "rib-ankylosis"})
    void theChestIsOneSmoothCurve(String condition) {
        Side side = condition.equals("kyphoscoliosis") ? Side.LEFT : Side.NONE;
        board.show(Bedside.healthy(50).condition(condition, side), "chest-shape", List.of("chest-shape"), Map.of());

        assertThat(board.number(
                        "const all = board.querySelector('.limb-edge').getAttribute('d').slice(1, -1).split('L')"
                                + ".map((p) => p.split(' ').map(Number)); return Math.max(...all.slice(1).map(([x, y], i) =>"
                                + " Math.hypot(x - all[i][0], y - all[i][1])))"))
                .as(condition)
                .isLessThan(14);
    }

    /** Fifty millimetres are a hundred units up. */
    @Test
    void whoseRibIsSprungDrawsAwayAsFarAsIsShown() {
        Bedside patient = Bedside.healthy(50).condition("rib-fractures", Side.LEFT);
        double[] drawn = new double[2];
        List<String> sides = List.of("left", "right");
        for (int i = 0; i < 2; i++) {
            String item = "rib-springing:" + sides.get(i);
            board.show(patient, "rib-springing", List.of(item), Map.of());
            drawn[i] = board.number("return board.querySelector('.away').getBBox().height") / 2;

            assertThat(drawn[i])
                    .isCloseTo(
                            patient.curve(item, "draws away from the hand").stream()
                                    .mapToDouble(mm -> mm)
                                    .max()
                                    .orElseThrow(),
                            within(0.2));
        }
        assertThat(drawn[0]).isGreaterThan(5 * drawn[1]);
    }
}
