package org.manubrium.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.manubrium.ForAll;
import org.manubrium.anatomy.Side;
import org.manubrium.marking.MarkSheet.Beside;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.CompiledKey;

/** Parts of the profile count only as far as an educator lets them. */
class ProfileCountsTest {
    private static final CompiledKey KEY = TinyKey.of(Side.LEFT);
    private static final Weights INSISTS = new Weights(20, 30, 25, 25, new Weights.Besides(10, 10, 20, 10));
    private static final Measured HALF = new Measured(0.5, 0.5, 0.5);

    private static MarkSheet mark(Weights weights, Measured measured, List<Event> events) {
        return new Marker(KEY).mark("oak", weights, Checked.PRACTICE, measured, Student.logged(events));
    }

    @Test
    void withoutWeightThePartsChangeNothingAndAreNotOnTheSheet() {
        MarkSheet plain = mark(TinyKey.WEIGHTS, Measured.NOTHING, Student.perfect(Side.LEFT).events);
        MarkSheet measured = mark(TinyKey.WEIGHTS, HALF, Student.perfect(Side.LEFT).events);

        assertThat(measured).isEqualTo(plain);
        assertThat(plain.besides()).isEmpty();
    }

    /** 100 parts at 100 per cent, and thoroughness, handling and information at 50: reckoned by hand. */
    @Test
    void withWeightTheyAreWeighedAsTheDomainsAre() {
        Weights three = new Weights(20, 30, 25, 25, new Weights.Besides(10, 10, 20, 0));

        assertThat(mark(three, HALF, Student.perfect(Side.LEFT).events).total())
                .isEqualTo((100 * 100 + 40 * 50) / 140.0, offset(1e-9));
        assertThat(mark(three, HALF, List.of()).besides())
                .extracting(Beside::name)
                .containsExactly("thoroughness", "order and handling", "information gained");
    }

    @Test
    void marksStayBoundedAndRiseWithEachPart() {
        ForAll.seeds(300, random -> {
            List<Event> events = MarkerSweepTest.attempt(random);
            double low = random.nextDouble();
            double high = low + (1 - low) * random.nextDouble();
            double before = mark(INSISTS, new Measured(low, low, low), events).total();

            assertThat(before).isBetween(0.0, 100.0);
            for (Measured more :
                    List.of(new Measured(high, low, low), new Measured(low, high, low), new Measured(low, low, high))) {
                assertThat(mark(INSISTS, more, events).total()).isBetween(before - 1e-9, 100.0);
            }
        });
    }

    @Test
    void aRightAnswerNeverLowersAMarkInWhichTheProfileCounts() {
        MarkerSweepTest.neverLowers(
                300,
                Student.perfect(Side.LEFT).events,
                events -> mark(INSISTS, HALF, events).total());
    }

    private static double confidence(String... guesses) {
        Weights one = new Weights(1, 0, 0, 0, new Weights.Besides(0, 0, 0, 1));
        return mark(one, HALF, List.of(new Event.Answered(Event.CONCLUSION, "differential", List.of(guesses))))
                .besides()
                .get(0)
                .percent();
    }

    /** Truth "root", rival "nerve": one less the mean of the squares, by hand. */
    @Test
    void confidenceIsBestWhereWhatIsBelievedIsSo() {
        assertThat(confidence("root=100")).isEqualTo(100);
        assertThat(confidence("root=70", "nerve=30")).isEqualTo(91, offset(1e-9));
        assertThat(confidence("nerve=100")).isZero();
        assertThat(confidence("root")).isZero();
        assertThat(confidence("nerve=5", "root=10")).isGreaterThan(confidence("nerve=5"));
    }

    @Test
    void weightsAreWrittenInFourNumbersOrInEight() {
        assertThat(INSISTS.text()).isEqualTo("20 30 25 25 10 10 20 10");
        assertThat(Weights.parse(INSISTS.text())).contains(INSISTS);
        assertThat(Weights.parse("20 30 25 25")).contains(TinyKey.WEIGHTS);
        assertThat(Weights.parse("20 30 25 25 0 0 0 0")).contains(TinyKey.WEIGHTS);
        assertThat(Weights.parse("0 0 0 0 10 10 20 10")).isEmpty();
        assertThat(Weights.parse("20 30 25 25 10")).isEmpty();
        assertThatThrownBy(() -> new Weights.Besides(-1, 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
