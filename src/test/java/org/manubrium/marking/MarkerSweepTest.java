package org.manubrium.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.manubrium.ForAll;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Reading;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.KeyLine;

/** What must hold of every attempt, tried on random ones. */
class MarkerSweepTest {
    private static final CompiledKey LEFT = TinyKey.of(Side.LEFT);
    private static final CompiledKey RIGHT = TinyKey.of(Side.RIGHT);

    private static MarkSheet mark(CompiledKey key, List<Event> events) {
        return Marker.mark(key, "oak", TinyKey.WEIGHTS, Student.logged(events));
    }

    @Test
    void everyMarkLiesBetweenNothingAndAHundredAndIsAlwaysTheSame() {
        ForAll.seeds(1000, random -> {
            List<Event> events = attempt(random);
            MarkSheet sheet = mark(LEFT, events);

            assertThat(sheet.total()).isBetween(0.0, 100.0);
            assertThat(sheet.domains()).allSatisfy(d -> assertThat(d.percent()).isBetween(0.0, 100.0));
            assertThat(sheet.lines()).allSatisfy(l -> assertThat(l.credit()).isBetween(0.0, 1.0));
            assertThat(mark(LEFT, List.copyOf(events))).isEqualTo(sheet);
        });
    }

    @Test
    void theMirroredAttemptAtTheMirroredCaseScoresTheSame() {
        ForAll.seeds(300, random -> {
            List<Event> events = attempt(random);

            assertThat(mark(
                                    RIGHT,
                                    events.stream()
                                            .map(MarkerSweepTest::mirrored)
                                            .toList())
                            .total())
                    .isEqualTo(mark(LEFT, events).total());
        });
    }

    /** Answers to different questions may come in any order once everything has been examined. */
    @Test
    void theOrderOfAnswersDoesNotMatter() {
        ForAll.seeds(300, random -> {
            List<Event> probes = LEFT.lines().stream()
                    .map(line -> (Event) new Event.Probed(line.item(), Map.of("reinforcement", "clench")))
                    .toList();
            List<Event> answers = new ArrayList<>();
            LEFT.lines().forEach(line -> answers.add(answer(random, line)));
            LEFT.lines().forEach(line -> answers.add(new Event.Answered(line.item(), "normal", List.of(word(random)))));
            List<Event> shuffled = new ArrayList<>(answers);
            Collections.shuffle(shuffled, new Random(random.nextLong()));

            assertThat(mark(LEFT, joined(probes, shuffled))).isEqualTo(mark(LEFT, joined(probes, answers)));
        });
    }

    @Test
    void aRightAnswerNeverLowersAMark() {
        List<Event> right = Student.perfect(Side.LEFT).events;
        List<Event> alsoRight = joined(right, elsewhere());
        neverLowers(500, alsoRight, events -> mark(LEFT, events).total());
    }

    /** Adding one of some right answers to any attempt leaves its total as high as it was. */
    static void neverLowers(int seeds, List<Event> right, ToDoubleFunction<List<Event>> total) {
        ForAll.seeds(seeds, random -> {
            List<Event> events = attempt(random);
            List<Event> more = joined(events, examinedFirst(right.get(random.nextInt(right.size()))));

            assertThat(total.applyAsDouble(more)).isGreaterThanOrEqualTo(total.applyAsDouble(events) - 1e-9);
        });
    }

    /** A reading is right only of what was examined, and "absent" only after reinforcement. */
    static List<Event> examinedFirst(Event event) {
        return event instanceof Event.Recorded recorded
                ? List.of(new Event.Probed(recorded.item(), Map.of("reinforcement", "clench")), event)
                : List.of(event);
    }

    /** Right things said of what nobody need look at. */
    private static List<Event> elsewhere() {
        Item toe = new Item("toe", Side.RIGHT, "");
        Item systolic = new Item("pressure", Side.NONE, "systolic");
        return List.of(
                new Event.Probed(toe, Map.of()),
                new Event.Recorded(toe, new Reading.Seen("down")),
                new Event.Answered(toe, "normal", List.of("normal")),
                new Event.Recorded(systolic, new Reading.Amount(118, "mmHg")),
                new Event.Answered(systolic, "normal", List.of("normal")));
    }

    static List<Event> joined(List<Event> first, List<Event> then) {
        List<Event> all = new ArrayList<>(first);
        all.addAll(then);
        return all;
    }

    static List<Event> attempt(RandomGenerator random) {
        List<Event> events = new ArrayList<>();
        for (int i = random.nextInt(40); i > 0; i--) {
            KeyLine line = LEFT.lines().get(random.nextInt(LEFT.lines().size()));
            events.add(
                    switch (random.nextInt(6)) {
                        case 0 -> new Event.Moved(random.nextBoolean() ? "lying" : "standing");
                        case 1, 2 ->
                            new Event.Probed(
                                    line.item(), random.nextBoolean() ? Map.of() : Map.of("reinforcement", "clench"));
                        case 3 -> answer(random, line);
                        case 4 -> new Event.Answered(line.item(), "normal", List.of(word(random)));
                        default -> said(random, line);
                    });
        }
        return events;
    }

    private static String word(RandomGenerator random) {
        return random.nextBoolean() ? "normal" : "abnormal";
    }

    private static Event said(RandomGenerator random, KeyLine line) {
        return switch (random.nextInt(5)) {
            case 0 ->
                new Event.Answered(line.item(), "roots", List.of("L5", "S1").subList(random.nextInt(2), 2));
            case 1 ->
                new Event.Answered(line.item(), "means", List.of(random.nextBoolean() ? "arc-root" : "arc-nerve"));
            case 2 -> new Event.Answered(Event.CONCLUSION, "site", List.of("root L5 left"));
            case 3 -> new Event.Answered(Event.CONCLUSION, "differential", List.of("nerve", "root"));
            default -> new Event.Asked("consent");
        };
    }

    private static Event answer(RandomGenerator random, KeyLine line) {
        return new Event.Recorded(
                line.item(),
                switch (line.item().manoeuvre()) {
                    case "ankle-reflex" -> new Reading.Grade(String.valueOf(random.nextInt(5)), "five");
                    case "neck-vein" -> new Reading.Amount(random.nextInt(10), "cm");
                    case "pressure" -> new Reading.Amount(random.nextInt(40, 180), "mmHg");
                    case "toe" -> new Reading.Seen(random.nextBoolean() ? "up" : "down");
                    default -> new Reading.Seen(random.nextBoolean() ? "firm" : "lax");
                });
    }

    static Event mirrored(Event event) {
        if (event instanceof Event.Probed probed) {
            return new Event.Probed(probed.item().mirrored(), probed.technique());
        }
        if (event instanceof Event.Recorded recorded) {
            return new Event.Recorded(recorded.item().mirrored(), recorded.reading());
        }
        if (event instanceof Event.Answered answered) {
            return new Event.Answered(
                    answered.item().mirrored(),
                    answered.question(),
                    answered.answer().stream()
                            .map(w -> w.replace("left", "right"))
                            .toList());
        }
        return event;
    }
}
