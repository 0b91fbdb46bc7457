package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.manubrium.examination.Manoeuvre;

/** Every kind of sign on a page of 390 pixels. */
class NarrowDrawingTest {
    private static final Bedside HEALTHY = Bedside.healthy(45);

    /** Words lower than eleven pixels (a design value), but for letters that are themselves the test. */
    private static final String TOO_SMALL = """
            return [...board.querySelectorAll('svg text:not(.letter)')].filter((word) => word.textContent.trim()).map((word) => {
              const at = word.getScreenCTM();
              return { text: word.textContent, px: parseFloat(getComputedStyle(word).fontSize) * Math.hypot(at.b, at.d) };
            }).filter(({ px }) => px < 10.95).map(({ text, px }) => text + ' ' + px.toFixed(1)).join(', ');
            """;

    @Test
    void noWordInADrawingIsTooSmallToBeRead() {
        int words = 0;
        try (DrawingBoard board = DrawingBoard.narrow(390)) {
            for (Manoeuvre manoeuvre : EverySignDrawnTest.kinds()) {
                String said = board.showAll(HEALTHY, manoeuvre);
                assertThat(board.text(TOO_SMALL)).as(manoeuvre.id()).isEmpty();
                assertThat(said).as(manoeuvre.id()).doesNotContain("NaN", "undefined", "Infinity");
                words += (int) board.number("return board.querySelectorAll('svg text').length");
            }
        }
        assertThat(words).isGreaterThan(500);
    }

    /** Without this the test above could not fail: the same words as the style sheet alone sizes them. */
    @Test
    void wordsThatAreNotKeptLegibleAreSmaller() {
        try (DrawingBoard board = DrawingBoard.narrow(390)) {
            board.showAll(HEALTHY, Bedside.manoeuvre("gait"));
            board.read("for (const word of board.querySelectorAll('svg text')) word.style.removeProperty('font-size');"
                    + " return true");
            assertThat(board.text(TOO_SMALL)).isNotEmpty();
        }
    }
}
