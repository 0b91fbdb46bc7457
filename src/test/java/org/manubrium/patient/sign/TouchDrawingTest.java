package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;

/** What the patient feels at each point is told on the map by the form of a mark, and beside it in words. */
class TouchDrawingTest extends AtTheBoard {
    private static final Bedside HEALTHY = Bedside.healthy(45);
    private static final String CROSSED = "return [...board.querySelectorAll('.body-map .touch-cross')]"
            + ".filter((one) => one.getAttribute('d') !== '').length";

    private static List<Double> put(Bedside patient, Manoeuvre pin) {
        return Examination.items(pin).stream()
                .map(item -> patient.show(item.toString(), Map.of()))
                .map(shown -> shown.measures().get(0))
                .map(Appearance.Measure::amount)
                .toList();
    }

    @Test
    void whereNothingIsFeltTheMarkIsCrossedOutAndElsewhereFilled() {
        Manoeuvre pin = Bedside.manoeuvre("pin");
        Bedside patient = HEALTHY.lesion("spinal cord T8", 1, "6 weeks");
        long felt = put(patient, pin).stream().filter(number -> number == 10).count();
        long lost = put(patient, pin).stream().filter(number -> number == 0).count();

        board.showAll(patient, pin);

        assertThat(felt).isPositive();
        assertThat(lost).isPositive();
        assertThat(board.number(CROSSED)).isEqualTo((double) lost);
        assertThat(board.number("return board.querySelectorAll('.body-map [data-of-ten=\"10\"]').length"))
                .isEqualTo((double) felt);
        assertThat(board.text("return board.querySelector('.touch-answers').textContent"))
                .contains("0 of 10: " + lost + " points", "10 of 10: " + felt + " points");
    }

    /** Common practice, no source: in health a pin is as sharp everywhere as on the cheek. */
    @Test
    void inHealthEveryMarkIsFilledAndTheLongListIsFolded() {
        Manoeuvre pin = Bedside.manoeuvre("pin");

        board.showAll(HEALTHY, pin);

        assertThat(put(HEALTHY, pin)).containsOnly(10.0);
        assertThat(board.number(CROSSED)).isZero();
        assertThat(board.number("return board.querySelectorAll('details:not([open]) table.touched').length"))
                .isEqualTo(1);
    }
}
