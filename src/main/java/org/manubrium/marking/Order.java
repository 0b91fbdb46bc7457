package org.manubrium.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.manubrium.examination.Item;
import org.manubrium.marking.MarkSheet.Handled;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Origin;
import org.manubrium.marking.key.Soreness;

/**
 * Whether the patient was asked where it hurts before a hand was laid on, and whether what hurts came last. Asked of those
 * only who examined what hurts, and the order only where they examined anything else in the same way.
 */
final class Order {
    private static final Origin PRACTICE = new Origin("practice", "common-practice");
    private static final String PAIN = "pain";

    private final List<Logged> events;

    private Order(List<Logged> events) {
        this.events = events;
    }

    static List<Handled> of(CompiledKey key, Attempt attempt) {
        Order order = new Order(attempt.events());
        List<Handled> handled = new ArrayList<>();
        key.sore().forEach(sore -> order.judge(sore, handled));
        return handled;
    }

    private void judge(Soreness sore, List<Handled> handled) {
        List<Logged> probes = events.stream()
                .filter(logged -> logged.event() instanceof Event.Probed probed
                        && sore.manoeuvres().contains(probed.item().manoeuvre()))
                .toList();
        OptionalInt hurt = probes.stream()
                .filter(p -> sore.sore().contains(item(p)))
                .mapToInt(Logged::seq)
                .findFirst();
        if (hurt.isEmpty()) {
            return;
        }
        handled.add(asked(sore, probes.get(0).seq()));
        List<Item> others = probes.stream()
                .map(Order::item)
                .filter(item -> !sore.sore().contains(item))
                .distinct()
                .toList();
        if (!others.isEmpty()) {
            handled.add(last(sore, hurt.getAsInt(), probes, others));
        }
    }

    private Handled asked(Soreness sore, int begun) {
        boolean asked = events.stream()
                .anyMatch(logged -> logged.seq() < begun
                        && logged.event() instanceof Event.Asked question
                        && question.question().equals(PAIN));
        return new Handled(
                "asked/" + sore.manoeuvres().get(0),
                "Ask where it hurts before: " + sore.name(),
                asked,
                asked
                        ? "You asked first."
                        : "A hand was laid on what hurts without asking first: the patient tightens, and trusts less.",
                PRACTICE);
    }

    private static Handled last(Soreness sore, int hurt, List<Logged> probes, List<Item> others) {
        boolean last = others.stream()
                .allMatch(other ->
                        probes.stream().filter(p -> item(p).equals(other)).anyMatch(p -> p.seq() < hurt));
        return new Handled(
                "last/" + sore.manoeuvres().get(0),
                "The painful place last: " + sore.name(),
                last,
                last
                        ? "What hurts came last."
                        : "What hurts was examined before the rest: afterwards the patient guards everywhere.",
                PRACTICE);
    }

    private static Item item(Logged logged) {
        return ((Event.Probed) logged.event()).item();
    }
}
