package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.manubrium.examination.Manoeuvre;

/** Every kind of sign just after it was done, on the page of somebody who wants no motion, and of somebody who does not mind it. */
class ReducedMotionTest {
    private static final Bedside HEALTHY = Bedside.healthy(45);

    /** Reads every drawing, and again a little later; counts what asked for a frame between and what was animated. */
    private static final String TWO_READS = """
            const done = arguments[arguments.length - 1];
            const kept = [...document.querySelectorAll(".kept")];
            const reads = () => kept.map((one) => one.outerHTML);
            let frames = 0;
            setTimeout(() => {
              const before = reads();
              const asked = window.requestAnimationFrame;
              window.requestAnimationFrame = (then) => (frames++, asked.call(window, then));
              setTimeout(() => {
                const moved = kept.filter((one, index) => one.outerHTML !== before[index]).map((one) => one.dataset.of);
                done([moved.length, moved.join(" "), frames, document.getAnimations().length].join("|"));
              }, 400);
            }, 100);
            """;

    private record Motion(int moved, String which, int frames, int animations) {
        static Motion of(String wish, Iterable<Manoeuvre> drawn) {
            try (DrawingBoard board = DrawingBoard.wantingMotion(wish)) {
                drawn.forEach(manoeuvre -> board.keepFresh(HEALTHY, manoeuvre));
                String[] read = String.valueOf(board.run(TWO_READS)).split("\\|", -1);
                return new Motion(
                        Integer.parseInt(read[0]), read[1], Integer.parseInt(read[2]), Integer.parseInt(read[3]));
            }
        }
    }

    @Test
    void nothingMovesForThoseWhoWantNoMotion() {
        assertThat(Motion.of("reduce", EverySignDrawnTest.kinds())).isEqualTo(new Motion(0, "", 0, 0));
    }

    /** Without this the test above could not fail: the same page, and a sign that plays for twenty seconds. */
    @Test
    void forTheOthersASignMoves() {
        Motion motion = Motion.of("no-preference", List.of(Bedside.manoeuvre("romberg")));

        assertThat(motion.which()).isEqualTo("romberg");
        assertThat(motion.frames()).isPositive();
    }
}
