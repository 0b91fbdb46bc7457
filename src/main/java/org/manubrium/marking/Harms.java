package org.manubrium.marking;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.manubrium.marking.MarkSheet.Harm;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.HarmRule;

/** What could have done harm: a flag each, never a subtraction lost in a sum. */
final class Harms {
    private final Attempt attempt;
    private final Set<String> intimate;

    private Harms(CompiledKey key, Attempt attempt) {
        this.attempt = attempt;
        this.intimate = key.lines().stream()
                .filter(line -> line.intimacy().equals("intimate"))
                .map(line -> line.item().manoeuvre())
                .collect(Collectors.toSet());
    }

    static List<Harm> of(CompiledKey key, Attempt attempt) {
        return new Harms(key, attempt).of(key);
    }

    private List<Harm> of(CompiledKey key) {
        return key.harms().stream()
                .filter(rule -> rule.before().equals("symptoms") ? wentOn(rule) : broken(rule))
                .map(rule -> new Harm(rule.id(), rule.text(), rule.origin()))
                .toList();
    }

    private boolean broken(HarmRule rule) {
        Set<String> asked = new HashSet<>();
        for (Logged logged : attempt.events()) {
            if (logged.event() instanceof Event.Asked question) {
                asked.add(question.question());
            } else if (applies(rule, logged.event()) && !asked.contains(rule.question())) {
                return true;
            }
        }
        return false;
    }

    private boolean applies(HarmRule rule, Event event) {
        if (event instanceof Event.Moved moved) {
            return rule.before().equals("move") && rule.positions().contains(moved.position());
        }
        return event instanceof Event.Probed probed
                && switch (rule.before()) {
                    case "touch" -> true;
                    case "intimate" -> intimate.contains(probed.item().manoeuvre());
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
    private boolean wentOn(HarmRule rule) {
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
}
