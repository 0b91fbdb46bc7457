package org.manubrium.marking;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.manubrium.marking.MarkSheet.Harm;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.HarmRule;

/** What could have done harm: a flag each, never a subtraction lost in a sum. */
final class Harms {
    private Harms() {}

    static List<Harm> of(CompiledKey key, Attempt attempt) {
        return key.harms().stream()
                .filter(rule -> rule.before().equals("symptoms") ? wentOn(rule, attempt) : broken(rule, key, attempt))
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
        if (event instanceof Event.Moved moved) {
            return rule.before().equals("move") && rule.positions().contains(moved.position());
        }
        return event instanceof Event.Probed probed
                && switch (rule.before()) {
                    case "touch" -> true;
                    case "intimate" -> intimate(key, probed);
                    case "handle", "unsafe" -> isAbout(rule, probed);
                    case "choice" ->
                        isAbout(rule, probed)
                                && probed.technique().values().stream().anyMatch(rule.choices()::contains);
                    case "way" -> done(rule, probed);
                    case "move" -> false;
                    default ->
                        throw new IllegalArgumentException(
                                "harm rule " + rule.id() + ": there is no rule about " + rule.before());
                };
    }

    private static boolean isAbout(HarmRule rule, Event.Probed probed) {
        return rule.manoeuvres().contains(probed.item().manoeuvre());
    }

    /** Whether the patient was examined on, upright, after having said that something is wrong. */
    private static boolean wentOn(HarmRule rule, Attempt attempt) {
        boolean unwell = false;
        for (Logged logged : attempt.events()) {
            if (logged.event() instanceof Event.Moved moved) {
                unwell = unwell && rule.positions().contains(moved.position());
            } else if (logged.event() instanceof Event.Probed probed
                    && rule.positions().contains(logged.position())) {
                if (unwell) {
                    return true;
                }
                unwell = isAbout(rule, probed);
            }
        }
        return false;
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
