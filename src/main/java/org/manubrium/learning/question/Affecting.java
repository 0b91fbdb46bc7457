package org.manubrium.learning.question;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Person;

/** Which conditions change which manoeuvres, by trying them on one average person. Each is tried once. */
final class Affecting {
    private static final long AVERAGE = 7;

    private final Invented invented;
    private final Person person;
    private final Map<String, Map<Item, Finding>> health = new ConcurrentHashMap<>();
    private final Map<String, List<Manoeuvre>> changed = new ConcurrentHashMap<>();
    private final Map<String, List<Condition>> causes = new ConcurrentHashMap<>();

    Affecting(Invented invented) {
        this.invented = invented;
        this.person = invented.person(new Random(AVERAGE));
    }

    /** New illnesses that take something. */
    List<Condition> illnesses() {
        return invented.conditions().all().stream()
                .filter(condition -> !condition.old() && !condition.effects().isEmpty())
                .toList();
    }

    /** The conditions that change a manoeuvre. */
    List<Condition> of(Manoeuvre manoeuvre) {
        return causes.computeIfAbsent(
                manoeuvre.id(),
                id -> illnesses().stream()
                        .filter(condition -> changes(full(condition), manoeuvre))
                        .toList());
    }

    /** The manoeuvres that a condition changes, in table order. */
    List<Manoeuvre> by(Condition condition) {
        return changed.computeIfAbsent(condition.id(), id -> {
            Body ill = full(condition);
            return invented.examination().manoeuvres().stream()
                    .filter(manoeuvre -> manoeuvre.intimacy().equals("none") && changes(ill, manoeuvre))
                    .toList();
        });
    }

    private boolean changes(Body ill, Manoeuvre manoeuvre) {
        Map<Item, Finding> healthy =
                health.computeIfAbsent(manoeuvre.id(), id -> invented.found(invented.healthy(person), manoeuvre));
        return !invented.alike(manoeuvre, healthy, ill);
    }

    private Body full(Condition condition) {
        return invented.with(person, invented.said(condition, new Random(AVERAGE)), 1);
    }

    /** How many of some manoeuvres a condition changes. */
    long changed(Condition condition, List<Manoeuvre> some) {
        Body ill = full(condition);
        return some.stream().filter(manoeuvre -> changes(ill, manoeuvre)).count();
    }
}
