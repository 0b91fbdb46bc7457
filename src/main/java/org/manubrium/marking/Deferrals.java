package org.manubrium.marking;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.DeferralRule;
import org.manubrium.marking.key.KeyLine;

/**
 * The intimate manoeuvres that were put off, and whether the reason is sound. Putting off never costs: where the case does
 * not turn on the manoeuvre nobody is asked for it, and where it does a sound reason, said and written down, is the right way
 * to handle it, as good as doing it. Nothing has been read then, and so nothing is earned for reading.
 */
final class Deferrals {
    private final CompiledKey key;

    /** By manoeuvre, the best reason that was given. */
    private final Map<String, Put> put = new LinkedHashMap<>();

    /** @param why what speaks for or against the reason, a sentence */
    record Put(String reason, boolean sound, String why) {}

    Deferrals(CompiledKey key, Attempt attempt) {
        this.key = key;
        Set<String> asked = new HashSet<>();
        for (Logged logged : attempt.events()) {
            if (logged.event() instanceof Event.Asked question) {
                asked.add(question.question());
            } else if (logged.event() instanceof Event.Deferred deferred) {
                rule(deferred).ifPresent(rule -> take(deferred, rule, asked));
            }
        }
    }

    private Optional<DeferralRule> rule(Event.Deferred deferred) {
        boolean intimate = lines(deferred.item().manoeuvre()).stream()
                .anyMatch(line -> line.intimacy().equals("intimate"));
        return key.deferrals().stream()
                .filter(rule -> intimate && rule.id().equals(deferred.reason()))
                .findFirst();
    }

    private void take(Event.Deferred deferred, DeferralRule rule, Set<String> asked) {
        String manoeuvre = deferred.item().manoeuvre();
        Put made = judged(rule, lines(manoeuvre), asked);
        put.merge(manoeuvre, made, (before, now) -> before.sound() ? before : now);
    }

    private static Put judged(DeferralRule rule, List<KeyLine> lines, Set<String> asked) {
        if (!rule.question().isEmpty() && !asked.contains(rule.question())) {
            return new Put(rule.name(), false, "The patient had not been asked, and so nobody could know.");
        }
        boolean needed = lines.stream().anyMatch(line -> line.necessity().essential());
        if (needed && !rule.essential()) {
            return new Put(rule.name(), false, "The case turns on it, and so it is needed.");
        }
        return new Put(rule.name(), true, "The reason is sound, and it was said.");
    }

    private List<KeyLine> lines(String manoeuvre) {
        return key.lines().stream()
                .filter(line -> line.item().manoeuvre().equals(manoeuvre))
                .toList();
    }

    Optional<Put> of(KeyLine line) {
        return Optional.ofNullable(put.get(line.item().manoeuvre()));
    }

    /** What was put off without being asked for; what is asked for has its line. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        put.forEach((manoeuvre, made) -> lines(manoeuvre).stream()
                .filter(line ->
                        lines(manoeuvre).stream().noneMatch(l -> l.necessity().essential()))
                .findFirst()
                .ifPresent(line -> notes.add("You put off: " + line.name() + ", because " + made.reason() + ". "
                        + made.why() + " The case does not turn on it; it costs nothing.")));
        return notes;
    }
}
