package org.manubrium.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
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
import org.manubrium.patient.sign.Signs;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** A patient made in one line, and what is read off them. Items are written "pin:left@c6-thumb". */
record Patient(Body body) {
    static final Reference REFERENCE = Tables.shipped();

    static Patient healthy() {
        return person(40, 0);
    }

    static Patient person(int age, long seed) {
        return new Patient(new Body(
                REFERENCE.anatomy(),
                REFERENCE.physiology(),
                new Person(age, Sex.FEMALE, Variation.of(seed)),
                List.of()));
    }

    /** A patient of 40 with one complete lesion that came six weeks ago. */
    static Patient with(String site) {
        return healthy().and(site, 1, "6 weeks");
    }

    Patient and(String site, double loss, String onset) {
        List<Lesion> lesions =
                REFERENCE.anatomy().lesions(site, loss, Onset.parse(onset).orElseThrow());
        return ailing(new Ailment(site, false, lesions, Map.of()));
    }

    Patient and(String site) {
        return and(site, 1, "6 weeks");
    }

    Patient shifted(String quantity, double by) {
        return ailing(new Ailment(quantity, false, List.of(), Map.of(quantity, by)));
    }

    private Patient ailing(Ailment ailment) {
        return new Patient(body.with(
                Stream.concat(body.ailments().stream(), Stream.of(ailment)).toList()));
    }

    Sign sign(String item) {
        Item wanted = item(item);
        return REFERENCE.signs().sign(body, Signs.usual(manoeuvre(wanted.manoeuvre()), wanted));
    }

    Appearance shown(String item, Map<String, String> technique) {
        Item wanted = item(item);
        String position = manoeuvre(wanted.manoeuvre()).positions().get(0);
        return REFERENCE.signs().show(body, new Probe(wanted, position, technique));
    }

    static Manoeuvre manoeuvre(String id) {
        return REFERENCE.examination().manoeuvre(id).orElseThrow();
    }

    private static Item item(String text) {
        String[] place = text.split("@", -1);
        String[] side = place[0].split(":", -1);
        Side which = side.length == 1 ? Side.NONE : Side.of(side[1]).orElseThrow();
        return new Item(side[0], which, place.length == 1 ? "" : place[1]);
    }

    /** What is read, as a word: a grade, a number without its unit, or one of a set. */
    String read(String item) {
        Reading reading = sign(item).reading();
        if (reading instanceof Reading.Grade grade) {
            return grade.grade();
        }
        return reading instanceof Reading.Amount amount
                ? String.valueOf(amount.value())
                : ((Reading.Seen) reading).seen();
    }

    /** What is read as a number: the amount, or the place of the grade on its scale, the lowest being 0. */
    double grade(String item) {
        Reading reading = sign(item).reading();
        return reading instanceof Reading.Grade grade
                ? REFERENCE.examination().scale(grade.scale()).rank(grade.grade())
                : ((Reading.Amount) reading).value();
    }

    /** Each item reads lower than it does in the same person in health, and is not normal. */
    void weak(String... items) {
        Patient before = new Patient(body.healthy());
        for (String item : items) {
            assertThat(grade(item)).as(item + " is less than in health").isLessThan(before.grade(item));
            assertThat(sign(item).normal()).as(item + " is normal").contains(false);
        }
    }

    /** Each item reads higher than it does in the same person in health, and is not normal. */
    void brisk(String... items) {
        Patient before = new Patient(body.healthy());
        for (String item : items) {
            assertThat(grade(item)).as(item + " is more than in health").isGreaterThan(before.grade(item));
            assertThat(sign(item).normal()).as(item + " is normal").contains(false);
        }
    }

    /** Each item reads nothing at all. */
    void lost(String... items) {
        for (String item : items) {
            assertThat(grade(item)).as(item).isZero();
        }
    }

    /** Each item reads as it does in the same person in health, and is normal. */
    void kept(String... items) {
        Patient before = new Patient(body.healthy());
        for (String item : items) {
            assertThat(read(item)).as(item).isEqualTo(before.read(item));
            assertThat(sign(item).normal()).as(item + " is normal").contains(true);
        }
    }

    /** Every item of a manoeuvre on one side. */
    static String[] on(String manoeuvre, Side side) {
        return Examination.items(manoeuvre(manoeuvre)).stream()
                .filter(item -> item.side() == side)
                .map(Item::toString)
                .toArray(String[]::new);
    }

    /** Every item on one side of every manoeuvre of a system. */
    static String[] system(String system, Side side) {
        List<String> items = new ArrayList<>();
        REFERENCE.examination().manoeuvres().stream()
                .filter(m -> m.system().equals(system))
                .forEach(m -> items.addAll(List.of(on(m.id(), side))));
        return items.toArray(String[]::new);
    }
}
