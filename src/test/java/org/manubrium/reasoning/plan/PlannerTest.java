package org.manubrium.reasoning.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Position;
import org.manubrium.reasoning.plan.Plan.Stop;
import org.manubrium.tables.Tables;

class PlannerTest {
    private static final Examination EXAMINATION = Tables.shipped().examination();
    private static final Planner PLANNER = new Planner(new Ways(EXAMINATION));
    private static final String START = "lying-45";

    /** Manoeuvres of the couch, the edge, prone, the side and standing. */
    private static final List<Task> POOL = Stream.of(
                    "triceps-reflex",
                    "neck-vein-height",
                    "plantar-response",
                    "hip-extension",
                    "hip-abduction",
                    "ankle-relaxation",
                    "romberg",
                    "gait",
                    "percussion-back")
            .map(id -> task(EXAMINATION.manoeuvre(id).orElseThrow()))
            .toList();

    private static Task task(Manoeuvre manoeuvre) {
        return new Task(manoeuvre.id(), manoeuvre.positions(), manoeuvre.seconds());
    }

    @Test
    void everySubsetOfNineManoeuvresIsPlannedAsWellAsByTryingEveryOrder() {
        for (int chosen = 0; chosen < 1 << POOL.size(); chosen++) {
            List<Task> tasks = new ArrayList<>();
            for (int i = 0; i < POOL.size(); i++) {
                if ((chosen & 1 << i) != 0) {
                    tasks.add(POOL.get(i));
                }
            }
            Plan plan = PLANNER.best(tasks, START);

            assertThat(List.of(plan.seconds(), plan.changes())).as("%s", tasks).isEqualTo(new Trying(tasks).best());
        }
    }

    /** Every order of the tasks and every position for each, move by tabled move. */
    private static final class Trying {
        private static final List<String> POSITIONS =
                EXAMINATION.positions().stream().map(Position::id).toList();
        private static final int[][] MOVES = POSITIONS.stream()
                .map(from -> POSITIONS.stream()
                        .mapToInt(to -> EXAMINATION.secondsToMove(from, to))
                        .toArray())
                .toArray(int[][]::new);

        private final int doing;
        private final int[][] places;
        private int moving = Integer.MAX_VALUE;
        private int changes = Integer.MAX_VALUE;

        Trying(List<Task> tasks) {
            this.doing = tasks.stream().mapToInt(Task::seconds).sum();
            this.places = tasks.stream()
                    .map(task -> task.positions().stream()
                            .mapToInt(POSITIONS::indexOf)
                            .toArray())
                    .toArray(int[][]::new);
        }

        List<Integer> best() {
            next(0, POSITIONS.indexOf(START), -1, 0, 0);
            return List.of(doing + moving, changes);
        }

        private void next(int done, int at, int last, int spent, int moved) {
            if (spent > moving || (spent == moving && moved >= changes)) {
                return;
            }
            if (done == (1 << places.length) - 1) {
                moving = spent;
                changes = moved;
                return;
            }
            for (int i = 0; i < places.length; i++) {
                for (int to : places[i]) {
                    // what is done in one position can be done in any order there: one order is enough
                    if ((done & 1 << i) == 0 && !(to == at && i < last)) {
                        next(done | 1 << i, to, i, spent + MOVES[at][to], moved + (to == at ? 0 : 1));
                    }
                }
            }
        }
    }

    @Test
    void aPlanDoesEveryTaskOnceWhereItCanBeDone() {
        Plan plan = PLANNER.best(POOL, START);

        assertThat(plan.stops().stream().flatMap(s -> s.tasks().stream())).containsExactlyInAnyOrderElementsOf(POOL);
        for (Stop stop : plan.stops()) {
            assertThat(stop.tasks()).allSatisfy(t -> assertThat(t.positions()).contains(stop.position()));
        }
    }

    @Test
    void theTimeOfAPlanIsTheTabledSecondsOfItsTasksAndMoves() {
        Plan plan = PLANNER.best(POOL, START);
        List<String> positions = plan.stops().stream().map(Stop::position).toList();
        int moves = 0;
        for (int i = 1; i < positions.size(); i++) {
            moves += EXAMINATION.secondsToMove(positions.get(i - 1), positions.get(i));
        }

        assertThat(plan.seconds())
                .isEqualTo(moves + POOL.stream().mapToInt(Task::seconds).sum());
        assertThat(plan.changes()).isEqualTo(positions.size() - 1);
    }

    @Test
    void nothingToDoNeedsNoMove() {
        Plan plan = PLANNER.best(List.of(), "standing");

        assertThat(plan.stops()).extracting(Stop::position).containsExactly("standing");
        assertThat(plan.seconds()).isZero();
        assertThat(plan.changes()).isZero();
    }

    @Test
    void aTaskThatCanBeDoneNowhereIsRefused() {
        assertThatThrownBy(() -> PLANNER.best(List.of(new Task("flying", List.of(), 3)), START))
                .hasMessageContaining("flying");
        assertThatThrownBy(() -> PLANNER.best(List.of(new Task("flying", List.of("in-the-air"), 3)), START))
                .hasMessageContaining("in-the-air");
    }

    /** All that is always done, each side and place once: it can be done with few moves, however long it takes. */
    @Test
    void theFullRoutineExaminationVisitsNoPositionTwice() {
        List<Task> all = EXAMINATION.manoeuvres().stream()
                .filter(m -> m.when().equals("always"))
                .map(m -> new Task(
                        m.id(),
                        m.positions(),
                        m.seconds() * Examination.items(m).size()))
                .toList();
        Plan plan = PLANNER.best(all, START);
        List<String> positions = plan.stops().stream().map(Stop::position).toList();

        assertThat(positions).doesNotHaveDuplicates();
        assertThat(Set.copyOf(positions)).containsAll(onlyPlace(all));
    }

    private static Set<String> onlyPlace(List<Task> tasks) {
        return tasks.stream()
                .filter(t -> t.positions().size() == 1)
                .map(t -> t.positions().get(0))
                .collect(Collectors.toSet());
    }
}
