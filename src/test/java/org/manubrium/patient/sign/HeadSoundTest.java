package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The fork and the whisper as the page makes them, rendered to memory and measured. */
class HeadSoundTest extends AtTheBoard {
    private static final String RENDER = """
            const [builder, given, seconds, rate] = arguments;
            const done = arguments[arguments.length - 1];
            import("/static/signs/hearing-sound.js").then(async (made) => {
              const context = new OfflineAudioContext(1, seconds * rate, rate);
              made[builder](given)(context, context.destination, 0);
              const samples = (await context.startRendering()).getChannelData(0);
              let text = "";
              for (const byte of new Uint8Array(samples.buffer)) text += String.fromCharCode(byte);
              done(btoa(text));
            }).catch((problem) => done("!" + problem));
            """;

    private static Sound render(String builder, Object given, double seconds) {
        String answer = String.valueOf(board.run(RENDER, builder, given, seconds, Sound.RATE));
        assertThat(answer).doesNotStartWith("!");
        return Sound.decoded(answer);
    }

    @Test
    void aForkSoundsAtItsPitchAndDiesAway() {
        for (int hertz : List.of(256, 512)) {
            Sound fork = render("forkSound", hertz, 4);

            assertThat(fork.pitch(0.3, 0.8, 100, 1000)).isCloseTo(hertz, within(5.0));
            assertThat(fork.decibel(0.2, 0.4) - fork.decibel(3.4, 3.6)).isBetween(15.0, 25.0);
        }
    }

    /** A whisper has no voice in it: nothing at the pitch of a speaker's cords. */
    @Test
    void aWhisperOfSixIsSixBurstsOfNoiseWithoutAVoice() {
        Sound whisper = render("whisperSound", List.of("4", "K", "7", "B", "2", "M"), 3.72);
        int bursts = 0;
        for (int item = 0; item < 6; item++) {
            double from = item * 0.62;
            if (whisper.power(from + 0.1, from + 0.3) > 20 * whisper.power(from + 0.5, from + 0.61)) {
                bursts++;
            }
        }

        assertThat(bursts).isEqualTo(6);
        double voice = 0;
        double speech = 0;
        for (double hertz = 80; hertz <= 180; hertz += 10) {
            voice += whisper.power(hertz, 0, 3.7);
            speech += whisper.power(hertz * 8, 0, 3.7);
        }
        assertThat(voice).isLessThan(speech / 20);
    }

    /** Sound is never made by itself, and never without its drawing. */
    @Test
    void noSoundIsMadeBeforeAButtonAsksForIt() {
        board.run("window.made = 0; const Real = window.AudioContext; window.AudioContext = class extends Real {"
                + " constructor(...all) { super(...all); window.made++; } }; arguments[0](true)");
        for (String manoeuvre : List.of("whispered-voice", "weber-test", "rinne-test")) {
            board.draw(Bedside.healthy(50), manoeuvre);
            assertThat(board.number("return window.made")).as(manoeuvre).isZero();
            assertThat(board.number("return board.querySelectorAll('svg.strip').length"))
                    .as(manoeuvre)
                    .isPositive();
        }
        board.read("board.querySelector('.actions button').click(); return true");
        assertThat(board.number("return window.made")).isEqualTo(1);
    }
}
