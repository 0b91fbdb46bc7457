package org.manubrium.marking.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.casefile.CaseFile;
import org.manubrium.casefile.CaseKeys;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.exchange.KeyJson;
import org.manubrium.marking.Measured;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

class ProfileMakerTest {
    private static final Reference REFERENCE = Tables.shipped();
    private static final CompiledKey KEY = key();
    private static final ProfileMaker MAKER = new ProfileMaker(KEY, REFERENCE.examination(), 0.9);

    private static CompiledKey key() {
        try {
            String text = Files.readString(Path.of("cases/gardener.yaml"));
            return new CaseKeys(REFERENCE)
                    .of(CaseFile.read(text, "gardener", REFERENCE).caseFile().orElseThrow());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<Logged> events(Event... events) {
        List<Logged.Keyed> keyed = new ArrayList<>();
        for (Event event : events) {
            keyed.add(new Logged.Keyed("k" + keyed.size(), event));
        }
        return Logged.inOrder(keyed, "lying-45");
    }

    private static Event probe(String manoeuvre) {
        return new Event.Probed(new Item(manoeuvre, Side.RIGHT, ""), Map.of());
    }

    private static Profile profile(Event... events) {
        return MAKER.of(events(events)).orElseThrow();
    }

    @Test
    void aKeyReadBackFromTheStoreGivesTheSameProfile() {
        CompiledKey read = KeyJson.read(KeyJson.write(KEY));

        assertThat(read.weighing()).isEqualTo(KEY.weighing());
        assertThat(new ProfileMaker(read, REFERENCE.examination(), 0.9).of(events(probe("ankle-reflex"))))
                .contains(profile(probe("ankle-reflex")));
    }

    @Test
    void whoExaminesNothingLearnsNothing() {
        Profile nothing = profile();

        assertThat(nothing.own()).hasSize(1);
        assertThat(nothing.handling()).isEqualTo(new Handling(0, 0, 0, 0, 0));
        assertThat(nothing.missed()).isNotEmpty();
    }

    @Test
    void aStepDoneTwiceCountsOnceInTheCurveAndTwiceInTheTime() {
        Profile once = profile(probe("ankle-reflex"));
        Profile twice = profile(probe("ankle-reflex"), probe("ankle-reflex"));

        assertThat(twice.end().bits()).isEqualTo(once.end().bits(), within(1e-12));
        assertThat(twice.handling().seconds()).isEqualTo(2 * once.handling().seconds());
        assertThat(twice.handling().fewestSeconds()).isEqualTo(once.handling().fewestSeconds());
    }

    @Test
    void movesBeyondTheBestPlanAreTold() {
        Handling handling = profile(
                        new Event.Moved("legs-over-edge"),
                        probe("ankle-reflex"),
                        new Event.Moved("lying-flat"),
                        probe("plantar-response"),
                        new Event.Moved("legs-over-edge"),
                        probe("knee-reflex"))
                .handling();

        assertThat(handling.changes()).isEqualTo(3);
        assertThat(handling.fewestChanges()).isZero();
        assertThat(handling.seconds()).isGreaterThan(handling.fewestSeconds());
    }

    @Test
    void whatTellsNothingOfTheDifferentialIsIdle() {
        Profile looked = profile(probe("acuity"));

        assertThat(looked.own()).hasSize(1);
        assertThat(looked.idleSeconds())
                .isEqualTo(REFERENCE
                        .examination()
                        .manoeuvre("acuity")
                        .orElseThrow()
                        .seconds());
    }

    @Test
    void theEfficientExaminerEndsSurerThanBeforeAndKnowsWhen() {
        Profile profile = profile();
        var end = profile.efficient().get(profile.efficient().size() - 1);

        assertThat(end.bits()).isLessThan(profile.own().get(0).bits());
        assertThat(end.truth()).isGreaterThanOrEqualTo(0.9);
    }

    @Test
    void theNextStepIsNoneOfThoseDone() {
        String first = MAKER.next(events(), "lying-45").orElseThrow();

        assertThat(first).isNotEmpty();
        assertThat(MAKER.next(events(probe("ankle-plantar-flexion")), "lying-45"))
                .isNotEqualTo(Optional.of("power of ankle plantar flexion, right"));
    }

    /** The share is counted here item by item, over what the tables ask of everybody. */
    @Test
    void thoroughnessIsTheShareOfTheRoutineOfTheSystemsOnWhichTheCaseTurns() {
        List<String> systems = KEY.essentials().stream()
                .map(line -> REFERENCE
                        .examination()
                        .manoeuvre(line.item().manoeuvre())
                        .orElseThrow()
                        .system())
                .distinct()
                .toList();
        List<Item> routine = REFERENCE.examination().manoeuvres().stream()
                .filter(m -> m.when().equals("always") && systems.contains(m.system()))
                .flatMap(m -> Examination.items(m).stream())
                .toList();
        Event first = new Event.Probed(routine.get(0), Map.of());
        Event[] all =
                routine.stream().map(item -> new Event.Probed(item, Map.of())).toArray(Event[]::new);

        assertThat(MAKER.measured(events(first)).thoroughness()).isEqualTo(1.0 / routine.size(), within(1e-12));
        assertThat(MAKER.measured(events(all)).thoroughness()).isEqualTo(1);
        assertThat(MAKER.measured(events())).isEqualTo(Measured.NOTHING);
    }

    /** The ankle reflex cannot be seen in somebody who stands. */
    @Test
    void aStepInAPositionThatHidesItsSignTellsNothing() {
        Profile hidden = profile(new Event.Moved("standing"), probe("ankle-reflex"));

        assertThat(hidden.own()).hasSize(1);
        assertThat(profile(probe("ankle-reflex")).own()).hasSize(2);
    }

    /** Worked by hand: half of the least time and moves in twice of them is (1/2 + 1/2) / 2, or less with more moves. */
    @Test
    void handlingIsTheMeanOfTimeAndMovesBesideTheBest() {
        Event[] best = {probe("ankle-reflex")};
        Event[] twice = {probe("ankle-reflex"), probe("ankle-reflex")};

        assertThat(MAKER.measured(events(best)).economy()).isEqualTo(1);
        assertThat(MAKER.measured(events(twice)).economy()).isEqualTo((0.5 + 1) / 2, within(1e-12));
    }

    @Test
    void eventsAreNumberedFromOneAndTakenOnce() {
        List<Logged> taken = Logged.inOrder(
                List.of(
                        new Logged.Keyed("a", new Event.Moved("standing")),
                        new Logged.Keyed("a", new Event.Moved("lying-flat")),
                        new Logged.Keyed("b", probe("ankle-reflex"))),
                "lying-45");

        assertThat(taken).extracting(Logged::seq).containsExactly(1, 2);
        assertThat(taken).extracting(Logged::position).containsExactly("lying-45", "standing");
    }
}
