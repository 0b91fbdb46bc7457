package org.manubrium.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.ForAll;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.KeyLine.Necessity;

/** Putting off an intimate examination with a reason is good handling: common practice, no source. */
class DeferralsTest {
    private static final Item TONE = new Item("anal-tone", Side.NONE, "");
    private static final CompiledKey NOT_NEEDED = TinyKey.of(Side.LEFT);
    private static final CompiledKey NEEDED = new CompiledKey(
            "needed",
            "hash",
            NOT_NEEDED.conventions(),
            NOT_NEEDED.lines().stream()
                    .map(line -> line.item().equals(TONE) ? line.with(new Necessity(true, "so")) : line)
                    .toList(),
            NOT_NEEDED.conclusion(),
            NOT_NEEDED.harms(),
            NOT_NEEDED.deferrals(),
            NOT_NEEDED.sore(),
            NOT_NEEDED.weighing());

    private static MarkSheet mark(CompiledKey key, Event... events) {
        return Marker.mark(key, "oak", TinyKey.WEIGHTS, Student.logged(List.of(events)));
    }

    private static Event deferred(String reason) {
        return new Event.Deferred(TONE, reason);
    }

    private static Line line(MarkSheet sheet, String id) {
        return sheet.lines().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
    }

    private static final Event OFFERED = new Event.Asked("chaperone");

    @Test
    void aSoundReasonEarnsTheHandlingAndNotTheReading() {
        MarkSheet sheet = mark(NEEDED, OFFERED, deferred("nobody"));

        assertThat(line(sheet, "essential/anal-tone").credit()).isEqualTo(1);
        assertThat(line(sheet, "essential/anal-tone").done()).isEqualTo("put off, because nobody can stand by");
        assertThat(line(sheet, "reading/anal-tone").credit()).isZero();
        assertThat(line(sheet, "normal/anal-tone").credit()).isZero();
    }

    @Test
    void aReasonThatNobodyCouldKnowIsNotSound() {
        assertThat(line(mark(NEEDED, deferred("nobody"), OFFERED), "essential/anal-tone")
                        .credit())
                .isZero();
    }

    @Test
    void notNeededIsNoReasonWhereTheCaseTurnsOnIt() {
        assertThat(line(mark(NEEDED, deferred("not-needed")), "essential/anal-tone")
                        .credit())
                .isZero();
        assertThat(line(mark(NEEDED, deferred("not-needed"), deferred("lesson")), "essential/anal-tone")
                        .credit())
                .isEqualTo(1);
    }

    @Test
    void whereTheCaseDoesNotTurnOnItPuttingOffNeitherEarnsNorCosts() {
        assertThat(mark(NOT_NEEDED, deferred("not-needed")).total())
                .isEqualTo(mark(NOT_NEEDED).total());
        assertThat(mark(NOT_NEEDED, deferred("not-needed")).notes()).anyMatch(note -> note.contains("costs nothing"));
    }

    @Test
    void puttingOffIsNoHarm() {
        assertThat(mark(NEEDED, deferred("lesson")).harms()).isEmpty();
        assertThat(mark(NEEDED, deferred("lesson"), new Event.Probed(TONE, Map.of()))
                        .harms())
                .extracting(MarkSheet.Harm::id)
                .containsExactly("no-consent", "no-chaperone");
    }

    @Test
    void onlyWhatIsIntimateCanBePutOff() {
        Event reflex = new Event.Deferred(Student.reflex(Side.LEFT), "lesson");

        assertThat(mark(NEEDED, reflex)).isEqualTo(mark(NEEDED));
    }

    @Test
    void puttingOffNeverLowersAMarkAndMarksStayBounded() {
        ForAll.seeds(300, random -> {
            List<Event> events = MarkerSweepTest.attempt(random);
            Event put = deferred(List.of("nobody", "not-needed", "lesson").get(random.nextInt(3)));
            double before = mark(NEEDED, events.toArray(Event[]::new)).total();
            double after = mark(
                            NEEDED, MarkerSweepTest.joined(events, List.of(put)).toArray(Event[]::new))
                    .total();

            assertThat(after).isBetween(before - 1e-9, 100.0);
        });
    }
}
