package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.examination.Reading;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Sign;
import org.manubrium.patient.Variation;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** Patients made from the shipped tables in one line, and what is read off them. */
record Bedside(Body body) {
    static final Reference REFERENCE = Tables.shipped();

    static Bedside healthy(int age) {
        return person(age, Variation.AVERAGE);
    }

    static Bedside person(int age, Variation variation) {
        return new Bedside(new Body(
                REFERENCE.anatomy(), REFERENCE.physiology(), new Person(age, Sex.FEMALE, variation), List.of()));
    }

    /** The same person with one more lesion, as "third nerve right", 0..1, "3 days". */
    Bedside lesion(String where, double loss, String onset) {
        List<Lesion> lesions =
                REFERENCE.anatomy().lesions(where, loss, Onset.parse(onset).orElseThrow());
        return ailing(new Ailment(where, false, lesions, Map.of()));
    }

    /** The same person with one quantity moved by so much. */
    Bedside shift(String quantity, double by) {
        return ailing(new Ailment(quantity, false, List.of(), Map.of(quantity, by)));
    }

    /** The same person with a tabled condition at its usual level and onset, in full. */
    Bedside condition(String id, Side side) {
        var condition = REFERENCE.conditions().condition(id).orElseThrow();
        return ailing(REFERENCE
                .conditions()
                .ailment(condition, side, condition.levels().stream().findFirst(), 1, Optional.empty()));
    }

    Bedside ailing(Ailment ailment) {
        List<Ailment> ailments = new ArrayList<>(body.ailments());
        ailments.add(ailment);
        return new Bedside(body.with(ailments));
    }

    Bedside mirrored() {
        return new Bedside(body.mirrored());
    }

    static Manoeuvre manoeuvre(String id) {
        return REFERENCE.examination().manoeuvre(id).orElseThrow();
    }

    /** An item as it is written: "pupil-near:right", "pressure-lying@systolic". */
    static Item item(String text) {
        String[] place = text.split("@", -1);
        String[] side = place[0].split(":", -1);
        return new Item(
                side[0],
                side.length == 1 ? Side.NONE : Side.of(side[1]).orElseThrow(),
                place.length == 1 ? "" : place[1]);
    }

    private static Probe probe(String text, Map<String, String> technique) {
        Item item = item(text);
        return new Probe(item, manoeuvre(item.manoeuvre()).positions().get(0), technique);
    }

    Sign sign(String item, Map<String, String> technique) {
        return REFERENCE.signs().sign(body, probe(item, technique));
    }

    Sign sign(String item) {
        return sign(item, Map.of());
    }

    double amount(String item, Map<String, String> technique) {
        return ((Reading.Amount) sign(item, technique).reading()).value();
    }

    double amount(String item) {
        return amount(item, Map.of());
    }

    /** What is read, as a word: the code of a grade or of one of a set. */
    String word(String item) {
        Reading reading = sign(item).reading();
        return reading instanceof Reading.Grade grade ? grade.grade() : ((Reading.Seen) reading).seen();
    }

    String meaning(String item) {
        return sign(item).meaning().term();
    }

    Appearance show(String item, Map<String, String> technique) {
        return REFERENCE.signs().show(body, probe(item, technique));
    }

    List<Double> curve(String item, String name, Map<String, String> technique) {
        return show(item, technique).curves().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow()
                .samples();
    }

    List<Double> curve(String item, String name) {
        return curve(item, name, Map.of());
    }

    /** Every sign of the manoeuvres of a system. */
    List<Sign> system(String system) {
        return REFERENCE.examination().manoeuvres().stream()
                .filter(m -> m.system().equals(system))
                .flatMap(m -> REFERENCE.signs().examine(body, m).stream())
                .toList();
    }

    static List<Item> items(String system) {
        return REFERENCE.examination().manoeuvres().stream()
                .filter(m -> m.system().equals(system))
                .flatMap(m -> Examination.items(m).stream())
                .toList();
    }
}
