package org.manubrium.school.mark;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.manubrium.school.mark.Marks.Rules;
import org.manubrium.store.Attempt;
import org.manubrium.store.StoredEvent;
import org.manubrium.store.StoredMark;
import org.manubrium.store.Stores;

/**
 * Some attempts of a round with all that marking them again reads, in a few queries. What is read here of an attempt that
 * was handed in stays so until its turn: only rounds change its mark, and rounds over a version go one after another. A key
 * that is corrected in between asks for a round of its own.
 */
final class RemarkPage {
    private final Marks marks;
    private final long round;
    private final List<Attempt> attempts;
    private final Map<Long, List<StoredEvent>> events;
    private final Map<Long, StoredMark> before;
    private final Map<Optional<Long>, Rules> rules = new HashMap<>();

    RemarkPage(Marks marks, Stores stores, long round, List<Attempt> attempts) {
        this.marks = marks;
        this.round = round;
        this.attempts = List.copyOf(attempts);
        List<Long> handedIn =
                attempts.stream().filter(Attempt::isHandedIn).map(Attempt::id).toList();
        this.events = stores.events().done(handedIn).stream().collect(Collectors.groupingBy(StoredEvent::attemptId));
        this.before = stores.marks().current(handedIn).stream()
                .collect(Collectors.toMap(StoredMark::attemptId, Function.identity(), RemarkPage::newest));
        attempts.forEach(a -> rules.computeIfAbsent(a.setCaseId(), set -> marks.rules(stores, a)));
    }

    private static StoredMark newest(StoredMark one, StoredMark other) {
        return one.id() > other.id() ? one : other;
    }

    List<Attempt> attempts() {
        return attempts;
    }

    /** The new mark of one of the attempts; empty if it would be the same as before, to the letter. */
    Optional<StoredMark> again(Attempt attempt) {
        StoredMark made = marks.mark(
                Objects.requireNonNull(rules.get(attempt.setCaseId())),
                attempt,
                events.getOrDefault(attempt.id(), List.of()),
                Optional.of(round));
        StoredMark old = before.get(attempt.id());
        return old != null && old.sheet().equals(made.sheet()) ? Optional.empty() : Optional.of(made);
    }
}
