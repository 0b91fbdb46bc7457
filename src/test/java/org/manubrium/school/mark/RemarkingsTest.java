package org.manubrium.school.mark;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.manubrium.TestSchool;
import org.manubrium.marking.Measured;
import org.manubrium.marking.event.Event;
import org.manubrium.store.Database;
import org.manubrium.store.EachDatabase;
import org.manubrium.store.MarkChange;
import org.manubrium.store.Remarking;

class RemarkingsTest {
    private static final List<Event> EVENTS = Stream.concat(
                    HandedIn.KEY.essentials().stream().map(line -> new Event.Probed(line.item(), java.util.Map.of())),
                    Stream.of(new Event.Answered(Event.CONCLUSION, "next", List.of("wait"))))
            .map(Event.class::cast)
            .toList();
    private static final int STUDENTS = 7;

    private final Clock clock = Clock.systemUTC();

    private Marks marks() {
        return new Marks(
                new KeysInForce(),
                TestSchool.REFERENCE.marking().weights(),
                TestSchool.REFERENCE.marking().conventions().ids().get(0),
                clock,
                (version, key, done) -> Measured.NOTHING);
    }

    private HandedIn handedIn(Database database) {
        return new HandedIn(database, marks(), STUDENTS, EVENTS);
    }

    private static List<Integer> marksEach(HandedIn all) {
        return all.attempts.stream()
                .map(a -> all.database
                        .direct(stores -> stores.marks().history(a.id()))
                        .size())
                .toList();
    }

    private static Remarking now(HandedIn all, Remarking round) {
        Optional<Remarking> found =
                all.database.direct(stores -> stores.remarkings().find(round.id()));
        return found.orElseThrow();
    }

    @EachDatabase
    void markingAgainByAnUnchangedKeyChangesNothing(Database database) {
        HandedIn all = handedIn(database);
        Remarkings remarkings = new Remarkings(database, marks(), clock);
        Remarking round = all.ask(remarkings);
        remarkings.finish(() -> true);

        assertThat(marksEach(all)).containsOnly(1);
        assertThat(now(all, round))
                .matches(Remarking::isFinished)
                .extracting(Remarking::unchanged)
                .isEqualTo(STUDENTS);
    }

    @EachDatabase
    void correctedKeyGivesEachAttemptANewMarkAndKeepsTheOldOneWithWhoAndWhy(Database database) {
        HandedIn all = handedIn(database);
        Remarkings remarkings = new Remarkings(database, marks(), clock);
        Remarking round = all.correctTo(remarkings, HandedIn.otherNextStep());
        remarkings.finish(() -> true);

        assertThat(marksEach(all)).containsOnly(2);
        assertThat(now(all, round).changed()).isEqualTo(STUDENTS);
        List<MarkChange> changes = database.direct(
                stores -> stores.marks().changes(all.attempts.get(0).id()));
        assertThat(changes.get(1).total()).isGreaterThan(changes.get(0).total());
        assertThat(changes).extracting(MarkChange::reason).containsExactly("", "a slip");
        assertThat(changes.get(1).who()).contains("Person teacher");
    }

    @EachDatabase
    void interruptedRoundIsGoneOnWithByAnotherAndMarksNothingTwice(Database database) {
        HandedIn all = handedIn(database);
        Remarkings first = new Remarkings(database, marks(), clock);
        Remarking round = all.correctTo(first, HandedIn.otherNextStep());
        AtomicInteger steps = new AtomicInteger();
        first.finish(() -> steps.incrementAndGet() <= 3);

        assertThat(now(all, round))
                .matches(r -> !r.isFinished())
                .extracting(Remarking::changed)
                .isEqualTo(3);
        assertThat(marksEach(all)).containsExactly(2, 2, 2, 1, 1, 1, 1);

        new Remarkings(database, marks(), clock).finish(() -> true);

        assertThat(now(all, round))
                .matches(Remarking::isFinished)
                .extracting(Remarking::changed)
                .isEqualTo(STUDENTS);
        assertThat(marksEach(all)).containsOnly(2);
    }

    @EachDatabase
    void serversThatShareARoundMarkEachAttemptOnce(Database database) {
        HandedIn all = handedIn(database);
        Remarking round = all.correctTo(new Remarkings(database, marks(), clock), HandedIn.otherNextStep());
        IntStream.range(0, 4).parallel().forEach(i -> new Remarkings(database, marks(), clock).finish(() -> true));

        assertThat(marksEach(all)).containsOnly(2);
        assertThat(now(all, round))
                .matches(Remarking::isFinished)
                .extracting(Remarking::changed)
                .isEqualTo(STUDENTS);
    }

    @EachDatabase
    void attemptThatCannotBeMarkedKeepsItsMarkAndDoesNotStopTheOthers(Database database) {
        HandedIn all = handedIn(database);
        database.inTransaction(stores -> stores.events()
                .addAfter(
                        stores.events().last(all.attempts.get(2).id()),
                        new org.manubrium.store.NewEvent(
                                all.attempts.get(2).id(), "bad", "moved", clock.instant(), 0, "x", "no JSON", "")));
        Remarkings remarkings = new Remarkings(database, marks(), clock);
        Remarking round = all.correctTo(remarkings, HandedIn.otherNextStep());
        remarkings.finish(() -> true);

        assertThat(marksEach(all)).containsExactly(2, 2, 1, 2, 2, 2, 2);
        assertThat(now(all, round))
                .matches(Remarking::isFinished)
                .extracting(Remarking::failed)
                .isEqualTo(1);
    }
}
