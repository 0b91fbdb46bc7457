package org.manubrium.marking;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.manubrium.marking.MarkSheet.Harm;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.HarmRule;

/** What was done without having asked first. */
final class Harms {
    private Harms() {}

    static List<Harm> of(CompiledKey key, Attempt attempt) {
        return key.harms().stream()
                .filter(rule -> broken(rule, key, attempt))
                .map(rule -> new Harm(rule.id(), rule.text(), rule.origin()))
                .toList();
    }

    private static boolean broken(HarmRule rule, CompiledKey key, Attempt attempt) {
        Set<String> asked = new HashSet<>();
        for (Logged logged : attempt.events()) {
            if (logged.event() instanceof Event.Asked question) {
                asked.add(question.question());
            } else if (applies(rule, key, logged.event()) && !asked.contains(rule.question())) {
                return true;
            }
        }
        return false;
    }

    private static boolean applies(HarmRule rule, CompiledKey key, Event event) {
        return switch (rule.before()) {
            case "touch" -> event instanceof Event.Probed;
            case "intimate" -> event instanceof Event.Probed probed && intimate(key, probed);
            case "move" ->
                event instanceof Event.Moved moved && rule.positions().contains(moved.position());
            case "way" -> event instanceof Event.Probed probed && done(rule, probed);
            default ->
                throw new IllegalArgumentException(
                        "harm rule " + rule.id() + ": expected touch, intimate, move or way, found " + rule.before());
        };
    }

    private static boolean done(HarmRule rule, Event.Probed probed) {
        return probed.technique().entrySet().stream()
                .anyMatch(choice -> rule.positions().contains(choice.getKey() + "=" + choice.getValue()));
    }

    private static boolean intimate(CompiledKey key, Event.Probed probed) {
        return key.lines().stream()
                .anyMatch(line -> line.item().manoeuvre().equals(probed.item().manoeuvre())
                        && line.intimacy().equals("intimate"));
    }
}
