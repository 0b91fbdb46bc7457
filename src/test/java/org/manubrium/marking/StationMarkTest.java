package org.manubrium.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.manubrium.ForAll;
import org.manubrium.anatomy.Side;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Origin;

/** The lost reflex is one of a condition, and the neck vein one of a manoeuvre, that nobody here has looked up. */
class StationMarkTest {
    private static final String CONDITION = "conditions/pressed-root#1f";
    private static final CompiledKey LEFT = unopened(Side.LEFT);
    private static final CompiledKey RIGHT = unopened(Side.RIGHT);
    private static final Checked STATION = new Checked(true, Set.of());
    private static final Checked CONFIRMED = new Checked(true, Set.of(CONDITION));

    private static CompiledKey unopened(Side bad) {
        CompiledKey key = TinyKey.of(bad);
        Origin memory = new Origin("memory", "from-memory", CONDITION);
        return new CompiledKey(
                key.caseId(),
                key.tablesHash(),
                key.conventions(),
                key.lines().stream()
                        .map(line -> line.item().equals(Student.reflex(bad)) ? line.onto(List.of(memory)) : line)
                        .toList(),
                key.conclusion(),
                key.harms(),
                key.deferrals(),
                key.sore(),
                key.weighing());
    }

    private static MarkSheet mark(CompiledKey key, Checked checked, List<Event> events) {
        return new Marker(key).mark("oak", TinyKey.WEIGHTS, checked, Measured.NOTHING, Student.logged(events));
    }

    private static List<String> unscored(MarkSheet sheet) {
        return sheet.lines().stream()
                .filter(line -> !line.scored())
                .map(Line::id)
                .toList();
    }

    @Test
    void inAStationWhatStandsOnAnUncheckedRowDoesNotScore() {
        MarkSheet sheet = mark(LEFT, STATION, List.of());

        assertThat(unscored(sheet))
                .contains(
                        "essential/ankle-reflex:left",
                        "reading/ankle-reflex:left",
                        "normal/ankle-reflex:left",
                        "means/ankle-reflex:left",
                        "site/ankle-reflex:left")
                .noneMatch(id -> id.contains("right") || id.startsWith("roots/") || id.startsWith("conclusion/"));
        assertThat(sheet.notes()).anyMatch(note -> note.contains("do not score"));
    }

    @Test
    void inPracticeEverythingScoresAndTheUncheckedIsMarked() {
        MarkSheet sheet = mark(LEFT, Checked.PRACTICE, List.of());

        assertThat(unscored(sheet)).isEmpty();
        assertThat(sheet.lines())
                .filteredOn(Line::unverified)
                .extracting(Line::id)
                .contains("reading/ankle-reflex:left", "normal/neck-vein");
    }

    @Test
    void theKeyIsShownAllTheSame() {
        assertThat(mark(LEFT, STATION, List.of()).lines())
                .filteredOn(line -> line.id().equals("reading/ankle-reflex:left"))
                .singleElement()
                .satisfies(line -> {
                    assertThat(line.key()).contains("0 on the scale five");
                    assertThat(line.standing().unchecked())
                            .extracting(Origin::row)
                            .containsExactly(CONDITION);
                });
    }

    @Test
    void whatIsConfirmedScoresAsIfItHadBeenSeen() {
        assertThat(unscored(mark(LEFT, CONFIRMED, List.of()))).noneMatch(id -> id.contains("ankle-reflex"));
        assertThat(mark(LEFT, CONFIRMED, List.of()).lines())
                .filteredOn(line -> line.id().contains("ankle-reflex"))
                .noneMatch(Line::unverified);
    }

    /** A row that a key does not name cannot have been confirmed. */
    @Test
    void aRowWithoutANameStaysUnconfirmed() {
        assertThat(unscored(mark(LEFT, new Checked(true, Set.of("")), List.of())))
                .contains("reading/neck-vein");
    }

    @Test
    void nothingSaidOfTheUncheckedChangesTheMark() {
        Set<String> off = Set.copyOf(unscored(mark(LEFT, STATION, List.of())));
        ForAll.seeds(300, random -> {
            List<Event> events = MarkerSweepTest.attempt(random);
            MarkSheet with = mark(LEFT, STATION, events);
            double byHand = scoredMean(with, off);

            assertThat(with.total()).isEqualTo(byHand, org.assertj.core.data.Offset.offset(1e-9));
        });
    }

    /** The total from the lines that score alone, as one would reckon it with a pencil. */
    private static double scoredMean(MarkSheet sheet, Set<String> off) {
        Map<DomainName, List<Line>> byDomain = sheet.lines().stream()
                .filter(line -> !off.contains(line.id()) && line.scored())
                .collect(Collectors.groupingBy(Line::domain));
        double whole = 0;
        double sum = 0;
        for (Map.Entry<DomainName, List<Line>> domain : byDomain.entrySet()) {
            double weight = TinyKey.WEIGHTS.of(domain.getKey());
            whole += weight;
            sum += weight
                    * domain.getValue().stream()
                            .mapToDouble(Line::credit)
                            .average()
                            .orElse(0);
        }
        return 100 * sum / whole;
    }

    @Test
    void aWrongAnswerAboutTheUncheckedCostsNothing() {
        List<Event> careful = Student.perfect(Side.LEFT).events;
        List<Event> wrong = MarkerSweepTest.joined(
                careful,
                List.of(
                        new Event.Answered(Student.reflex(Side.LEFT), "normal", List.of("normal")),
                        new Event.Answered(Student.reflex(Side.LEFT), "means", List.of("nonsense"))));

        assertThat(mark(LEFT, STATION, wrong).total()).isEqualTo(100);
        assertThat(mark(LEFT, CONFIRMED, wrong).total()).isLessThan(100);
    }

    @Test
    void marksStayBoundedSymmetricAndRepeatable() {
        ForAll.seeds(300, random -> {
            List<Event> events = MarkerSweepTest.attempt(random);
            List<Event> mirrored =
                    events.stream().map(MarkerSweepTest::mirrored).toList();
            for (Checked checked : List.of(STATION, CONFIRMED)) {
                MarkSheet sheet = mark(LEFT, checked, events);

                assertThat(sheet.total()).isBetween(0.0, 100.0);
                assertThat(mark(LEFT, checked, events)).isEqualTo(sheet);
                assertThat(mark(RIGHT, checked, mirrored).total()).isEqualTo(sheet.total());
            }
        });
    }

    @Test
    void aRightAnswerNeverLowersAMarkInAStation() {
        MarkerSweepTest.neverLowers(
                500,
                Student.perfect(Side.LEFT).events,
                events -> mark(LEFT, STATION, events).total());
    }

    @Test
    void whereNothingScoresThereIsNoMarkAndTheSheetSaysSo() {
        CompiledKey key = new CompiledKey(
                "all",
                "hash",
                LEFT.conventions(),
                LEFT.lines().stream()
                        .filter(line -> line.item().equals(Student.reflex(Side.LEFT)))
                        .filter(line -> !line.beneath().isEmpty())
                        .map(line -> line.withForms(line.forms().stream()
                                .map(form -> form.withRoots(List.of()))
                                .toList()))
                        .toList(),
                new org.manubrium.marking.key.ConclusionKey(List.of(), List.of(), List.of(), List.of(), TinyKey.SEEN),
                List.of(),
                List.of(),
                List.of(),
                LEFT.weighing());
        MarkSheet sheet = mark(key, STATION, List.of());

        assertThat(sheet.total()).isZero();
        assertThat(sheet.notes()).anyMatch(note -> note.contains("there is no mark"));
    }

    @Test
    void aRowThatReadsOtherwiseHasAnotherName() {
        Origin was = Origin.of("t", "id", new Says("cold"), "memory", "from-memory");

        assertThat(Origin.of("t", "id", new Says("warm"), "memory", "from-memory"))
                .isNotEqualTo(was);
        assertThat(Origin.of("t", "id", new Says("cold"), "memory", "from-memory"))
                .isEqualTo(was);
        assertThat(was.row()).startsWith("t/id#");
        assertThat(Origin.of("t", "id", new Says("cold"), "book", "seen").row()).isEmpty();
    }

    private record Says(String text) {}
}
