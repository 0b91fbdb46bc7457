package org.manubrium.school.signdesk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.examination.Variant;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Conditions;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Sign;
import org.manubrium.patient.Variation;
import org.manubrium.patient.sign.Signs;
import org.manubrium.tables.Reference;

/** Shows what a manoeuvre finds in health and in each condition. */
public final class SignDesk {
    private static final String AREA = "heart-area";

    private final Reference reference;
    private final ReadingWords words;
    private final Map<String, List<Example>> ranges = new ConcurrentHashMap<>();

    public SignDesk(Reference reference) {
        this.reference = reference;
        this.words = new ReadingWords(reference.examination());
    }

    /** The manoeuvres by system, in the order of the tables. */
    public Map<String, List<Manoeuvre>> bySystem() {
        Map<String, List<Manoeuvre>> found = new LinkedHashMap<>();
        reference
                .examination()
                .manoeuvres()
                .forEach(m -> found.computeIfAbsent(m.system(), s -> new ArrayList<>())
                        .add(m));
        return found;
    }

    public Optional<Manoeuvre> manoeuvre(String id) {
        return reference.examination().manoeuvre(id);
    }

    /** Every condition that makes the manoeuvre find something else than in health, by what is then read. */
    public List<Example> range(Manoeuvre manoeuvre) {
        return ranges.computeIfAbsent(manoeuvre.id(), id -> reckon(manoeuvre));
    }

    private List<Example> reckon(Manoeuvre manoeuvre) {
        List<String> health = readings(manoeuvre, body(Chosen.health(Chosen.USUAL_AGE)));
        return reference.conditions().all().stream()
                .flatMap(condition -> levels(condition).flatMap(level -> example(manoeuvre, condition, level, health)))
                .toList();
    }

    private static Stream<Optional<String>> levels(Condition condition) {
        return condition.levels().isEmpty()
                ? Stream.of(Optional.empty())
                : condition.levels().stream().map(Optional::of);
    }

    private Stream<Example> example(
            Manoeuvre manoeuvre, Condition condition, Optional<String> level, List<String> health) {
        List<String> now = readings(manoeuvre, body(Chosen.usual(condition.id(), level)));
        for (int i = 0; i < now.size(); i++) {
            if (!now.get(i).equals(health.get(i))) {
                return Stream.of(new Example(condition.id(), condition.name(), condition.sided(), level, now.get(i)));
            }
        }
        return Stream.empty();
    }

    private List<String> readings(Manoeuvre manoeuvre, Body body) {
        Signs signs = reference.signs();
        return Examination.items(manoeuvre).stream()
                .map(item -> signs.reading(manoeuvre, signs.finding(body, Signs.usual(manoeuvre, item))))
                .map(reading -> words.of(manoeuvre, reading))
                .toList();
    }

    /**
     * Every item of a manoeuvre done with one technique.
     *
     * @throws IllegalArgumentException if there is no such condition or level
     */
    public List<Look> looks(Manoeuvre manoeuvre, Chosen chosen, Map<String, String> technique) {
        Body body = body(chosen);
        return Examination.items(manoeuvre).stream()
                .map(item -> look(manoeuvre, body, item, technique))
                .toList();
    }

    /** The same at every place that a choice of technique leaves open, so that places can be compared. */
    public List<Look> everywhere(Manoeuvre manoeuvre, Chosen chosen, Map<String, String> technique) {
        Optional<Variant> where = manoeuvre.variants().stream()
                .filter(variant -> variant.id().equals(AREA) && !technique.containsKey(AREA))
                .findFirst();
        return where.map(area -> area.choices().stream()
                        .map(choice -> with(technique, choice.id()))
                        .flatMap(there -> looks(manoeuvre, chosen, there).stream())
                        .toList())
                .orElseGet(() -> looks(manoeuvre, chosen, technique));
    }

    private static Map<String, String> with(Map<String, String> technique, String area) {
        Map<String, String> there = new LinkedHashMap<>(technique);
        there.put(AREA, area);
        return there;
    }

    private Look look(Manoeuvre manoeuvre, Body body, Item item, Map<String, String> technique) {
        Probe probe = new Probe(item, manoeuvre.positions().get(0), technique);
        Sign sign = reference.signs().sign(body, probe);
        return new Look(
                probe,
                reference.signs().show(body, probe),
                words.of(manoeuvre, sign.reading()),
                sign.normal().orElse(true));
    }

    private Body body(Chosen chosen) {
        Person person = new Person(chosen.age(), Sex.FEMALE, Variation.AVERAGE);
        List<Ailment> ailments =
                chosen.condition().map(id -> ailment(id, chosen)).stream().toList();
        return new Body(reference.anatomy(), reference.physiology(), person, ailments);
    }

    private Ailment ailment(String id, Chosen chosen) {
        Conditions conditions = reference.conditions();
        Condition condition = conditions
                .condition(id)
                .orElseThrow(() -> new IllegalArgumentException("no condition is called \"" + id + "\""));
        Optional<String> level =
                chosen.level().or(() -> condition.levels().stream().findFirst());
        if (level.isPresent() && !condition.levels().contains(level.get())) {
            throw new IllegalArgumentException(
                    id + " is said with one of " + condition.levels() + ", found \"" + level.get() + "\"");
        }
        Side side = condition.sided() ? chosen.side() : Side.NONE;
        return conditions.ailment(condition, side, level, chosen.severity(), chosen.onset());
    }

    /** The places that a manoeuvre reads, by id. */
    public static Map<String, String> places(Manoeuvre manoeuvre) {
        Map<String, String> found = new LinkedHashMap<>();
        manoeuvre.places().forEach(place -> found.put(place.id(), place.name()));
        return found;
    }
}
