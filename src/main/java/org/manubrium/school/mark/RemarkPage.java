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
import org.manubrium.store.Remarking.Outcome;
import org.manubrium.store.StoredEvent;
import org.manubrium.store.StoredMark;
import org.manubrium.store.Stores;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Some attempts of a round, marked again with all that this reads, in a few queries. What is read here of an attempt that
 * was handed in stays so until its turn: only rounds change its mark, and rounds over a version go one after another. A key
 * that is corrected in between asks for a round of its own.
 */
final class RemarkPage {
    private static final Logger LOG = LoggerFactory.getLogger(RemarkPage.class);
    private static final Result OPEN = new Result(Outcome.OPEN, Optional.empty());

    private final Marks marks;
    private final long round;
    private final List<Attempt> attempts;
    private final Map<Long, List<StoredEvent>> events;
    private final Map<Long, StoredMark> before;
    private final Map<Optional<Long>, Rules> rules = new HashMap<>();
    private final Map<Long, Result> results = new HashMap<>();

    /** @param mark empty if it would be the same as before, to the letter */
    record Result(Outcome outcome, Optional<StoredMark> mark) {}

    RemarkPage(Marks marks, Stores stores, long round, List<Attempt> attempts) {
        this.marks = marks;
        this.round = round;
        this.attempts = List.copyOf(attempts);
        List<Attempt> handedIn = attempts.stream().filter(Attempt::isHandedIn).toList();
        List<Long> ids = handedIn.stream().map(Attempt::id).toList();
        this.events = stores.events().done(ids).stream().collect(Collectors.groupingBy(StoredEvent::attemptId));
        this.before = stores.marks().current(ids).stream()
                .collect(Collectors.toMap(StoredMark::attemptId, Function.identity(), RemarkPage::newest));
        handedIn.forEach(a -> rules.computeIfAbsent(a.setCaseId(), set -> marks.rules(stores, a)));
        handedIn.forEach(a -> results.put(a.id(), marked(a)));
    }

    private static StoredMark newest(StoredMark one, StoredMark other) {
        return one.id() > other.id() ? one : other;
    }

    List<Attempt> attempts() {
        return attempts;
    }

    /** What became of one of the attempts. */
    Result result(Attempt attempt) {
        return results.getOrDefault(attempt.id(), OPEN);
    }

    /** One that cannot be marked keeps its mark, is counted, and does not stop the others. */
    private Result marked(Attempt attempt) {
        try {
            StoredMark made = again(attempt);
            StoredMark old = before.get(attempt.id());
            return old != null && old.sheet().equals(made.sheet())
                    ? new Result(Outcome.UNCHANGED, Optional.empty())
                    : new Result(Outcome.CHANGED, Optional.of(made));
        } catch (RuntimeException e) {
            LOG.warn("attempt {} could not be marked again: {}", attempt.id(), String.valueOf(e));
            return new Result(Outcome.FAILED, Optional.empty());
        }
    }

    private StoredMark again(Attempt attempt) {
        return marks.mark(
                Objects.requireNonNull(rules.get(attempt.setCaseId())),
                attempt,
                events.getOrDefault(attempt.id(), List.of()),
                Optional.of(round));
    }
}
