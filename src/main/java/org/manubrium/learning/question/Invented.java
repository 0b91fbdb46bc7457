package org.manubrium.learning.question;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.PlaceMode;
import org.manubrium.examination.Probe;
import org.manubrium.examination.Reading;
import org.manubrium.examination.Variant;
import org.manubrium.learning.question.SignQuestion.Look;
import org.manubrium.learning.question.SignQuestion.Panel;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Conditions;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Person;
import org.manubrium.patient.Physiology;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Variation;
import org.manubrium.patient.sign.Signs;

/** Patients invented for one question, and what manoeuvres show on them. */
final class Invented {
    private static final int YOUNGEST = 35;
    private static final int YEARS = 30;
    private static final String REINFORCEMENT = "reinforcement";

    private final Anatomy anatomy;
    private final Physiology physiology;
    private final Conditions conditions;
    private final Signs signs;

    Invented(Anatomy anatomy, Physiology physiology, Conditions conditions, Signs signs) {
        this.anatomy = anatomy;
        this.physiology = physiology;
        this.conditions = conditions;
        this.signs = signs;
    }

    Conditions conditions() {
        return conditions;
    }

    Examination examination() {
        return signs.examination();
    }

    /** A condition said of one patient. */
    record Said(Condition condition, Side side, Optional<String> level) {
        String words() {
            return Conditions.said(condition, side, level);
        }

        Said at(String other) {
            return new Said(condition, side, Optional.of(other));
        }
    }

    /** On a side drawn by chance, at its usual level. */
    Said said(Condition condition, Random random) {
        Side side = condition.sided() ? (random.nextBoolean() ? Side.RIGHT : Side.LEFT) : Side.NONE;
        return new Said(condition, side, condition.levels().stream().findFirst());
    }

    /** Another condition in the same patient's place: on the same side if both have one. */
    Said beside(Said truth, Condition other, Random random) {
        Said drawn = said(other, random);
        boolean same = other.sided() && truth.side() != Side.NONE;
        return new Said(other, same ? truth.side() : drawn.side(), drawn.level());
    }

    /** An average person of an age drawn by chance: so that what differs is the disease. */
    Person person(Random random) {
        Sex sex = random.nextBoolean() ? Sex.FEMALE : Sex.MALE;
        return new Person(YOUNGEST + random.nextInt(YEARS), sex, Variation.AVERAGE);
    }

    Body healthy(Person person) {
        return new Body(anatomy, physiology, person, List.of());
    }

    Body with(Person person, Said said, double severity) {
        return healthy(person)
                .with(List.of(
                        conditions.ailment(said.condition(), said.side(), said.level(), severity, Optional.empty())));
    }

    /** What is found item by item. */
    Map<Item, Finding> found(Body body, Manoeuvre manoeuvre) {
        return Examination.items(manoeuvre).stream()
                .collect(Collectors.toMap(item -> item, item -> finding(body, manoeuvre, item)));
    }

    /** Whether two patients would be written down alike, item by item. */
    boolean alike(Manoeuvre manoeuvre, Body one, Body other) {
        return Examination.items(manoeuvre).stream().allMatch(item -> alike(manoeuvre, item, one, other));
    }

    /** Whether a patient would be written down as was found before, item by item. */
    boolean alike(Manoeuvre manoeuvre, Map<Item, Finding> before, Body other) {
        return before.entrySet().stream()
                .allMatch(one -> same(manoeuvre, one.getValue(), finding(other, manoeuvre, one.getKey())));
    }

    /** Whether two patients would be written down alike at one item. */
    boolean alike(Manoeuvre manoeuvre, Item item, Body one, Body other) {
        return same(manoeuvre, finding(one, manoeuvre, item), finding(other, manoeuvre, item));
    }

    private boolean same(Manoeuvre manoeuvre, Finding a, Finding b) {
        if (a instanceof Finding.Measured first && b instanceof Finding.Measured second) {
            return Math.abs(first.value() - second.value()) <= manoeuvre.tolerance();
        }
        return signs.reading(manoeuvre, a).equals(signs.reading(manoeuvre, b));
    }

    Finding finding(Body body, Manoeuvre manoeuvre, Item item) {
        return signs.finding(body, probe(manoeuvre, item));
    }

    Reading reading(String scale, Finding finding) {
        return signs.reading(scale, finding);
    }

    /** A manoeuvre on one patient, both sides; of points, those given. */
    Panel panel(String label, Body body, Manoeuvre manoeuvre, List<Item> items) {
        return new Panel(
                label,
                manoeuvre.id(),
                items.stream().map(item -> look(body, manoeuvre, item)).toList());
    }

    private Look look(Body body, Manoeuvre manoeuvre, Item item) {
        Probe probe = probe(manoeuvre, item);
        return new Look(item.side(), item.place(), probe.technique(), signs.show(body, probe));
    }

    /** The items shown together: every side, and of points the one where two patients differ, or the first. */
    List<Item> shown(Manoeuvre manoeuvre, Body one, Body other) {
        List<Item> items = Examination.items(manoeuvre);
        String place = items.stream()
                .filter(item -> !alike(manoeuvre, item, one, other))
                .findFirst()
                .orElse(items.get(0))
                .place();
        boolean together = manoeuvre.placeMode() == PlaceMode.TOGETHER;
        String shown = together ? items.get(0).place() : place;
        return items.stream().filter(item -> item.place().equals(shown)).toList();
    }

    /** The usual way, reinforced where that can be: so that what is shown is what is truly there. */
    static Probe probe(Manoeuvre manoeuvre, Item item) {
        Map<String, String> technique = manoeuvre.variants().stream()
                .filter(variant -> variant.id().equals(REINFORCEMENT))
                .collect(Collectors.toMap(
                        Variant::id,
                        v -> v.choices().get(v.choices().size() - 1).id()));
        return new Probe(item, manoeuvre.positions().get(0), technique);
    }
}
