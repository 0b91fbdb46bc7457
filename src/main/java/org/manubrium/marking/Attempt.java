package org.manubrium.marking;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.manubrium.examination.Item;
import org.manubrium.examination.Reading;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.KeyLine;

/** The events of one attempt, folded into what is asked of them: the last answer counts, and what came before what. */
final class Attempt {
    private final List<Logged> events;
    private final Map<Item, Logged> readings = new LinkedHashMap<>();
    private final Map<Question, List<String>> answers = new HashMap<>();
    private final Map<Item, List<Logged>> probes = new HashMap<>();
    private final Map<OfSide, List<Logged>> probesOfSide = new HashMap<>();
    private final Set<OfSide> met = new HashSet<>();

    private record Question(Item item, String question) {}

    Attempt(List<Logged> events) {
        this.events = List.copyOf(events);
        events.forEach(this::take);
    }

    private void take(Logged logged) {
        if (logged.event() instanceof Event.Probed probed) {
            probes.computeIfAbsent(probed.item(), item -> new ArrayList<>()).add(logged);
            probesOfSide
                    .computeIfAbsent(OfSide.of(probed.item()), side -> new ArrayList<>())
                    .add(logged);
            met.add(OfSide.of(probed.item()));
        } else if (logged.event() instanceof Event.Recorded recorded) {
            readings.put(recorded.item(), logged);
            met.add(OfSide.of(recorded.item()));
        } else if (logged.event() instanceof Event.Answered answered) {
            answers.put(new Question(answered.item(), answered.question()), answered.answer());
            met.add(OfSide.of(answered.item()));
        }
    }

    List<Logged> events() {
        return events;
    }

    /** Every word of every answer that stands, sorted. */
    Collection<String> standing() {
        return new TreeSet<>(answers.values().stream().flatMap(List::stream).toList());
    }

    /** The sides of manoeuvres that were examined, or about which anything was written down. */
    Set<OfSide> met() {
        return met;
    }

    /** Every time the item was examined, in order. */
    List<Logged> probes(KeyLine line) {
        return line.together()
                ? probesOfSide.getOrDefault(OfSide.of(line.item()), List.of())
                : probes.getOrDefault(line.item(), List.of());
    }

    boolean probed(KeyLine line) {
        return !probes(line).isEmpty();
    }

    /** The last reading of the item, if one was written down. */
    Optional<Reading> reading(KeyLine line) {
        return Optional.ofNullable(readings.get(line.item()))
                .map(logged -> ((Event.Recorded) logged.event()).reading());
    }

    /** Whether the item was examined before its last reading. */
    boolean readAfterProbe(KeyLine line) {
        Logged reading = readings.get(line.item());
        return reading != null && probes(line).stream().anyMatch(p -> p.seq() < reading.seq());
    }

    /** How the item had been examined when its last reading was written down. */
    Collection<Map<String, String>> techniquesBeforeReading(KeyLine line) {
        Logged reading = readings.get(line.item());
        return probes(line).stream()
                .filter(p -> reading != null && p.seq() < reading.seq())
                .map(p -> ((Event.Probed) p.event()).technique())
                .toList();
    }

    /** The last answer about the item, or about its side of the manoeuvre as a whole; empty if none stands. */
    List<String> answer(Item item, String question) {
        List<String> own = answers.getOrDefault(new Question(item, question), List.of());
        return own.isEmpty() ? whole(item, question) : own;
    }

    /** The last answer about the whole manoeuvre on the item's side. */
    List<String> whole(Item item, String question) {
        return answers.getOrDefault(new Question(new Item(item.manoeuvre(), item.side(), ""), question), List.of());
    }

    /** Whether the item itself has an answer, so that the one about the whole does not matter. */
    boolean answeredItself(Item item, String question) {
        return !answers.getOrDefault(new Question(item, question), List.of()).isEmpty();
    }
}
