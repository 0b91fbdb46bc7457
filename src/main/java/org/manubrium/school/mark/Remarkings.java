package org.manubrium.school.mark;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.manubrium.store.Attempt;
import org.manubrium.store.AuditEntry;
import org.manubrium.store.Database;
import org.manubrium.store.Remarking;
import org.manubrium.store.Remarking.Outcome;
import org.manubrium.store.StoredMark;
import org.manubrium.store.Stores;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Marks again, one transaction for each attempt. How far a round has come is written in the same transaction as the mark,
 * and holds the round, so that a crash loses and repeats nothing and several servers can share one round.
 */
public final class Remarkings {
    private static final Logger LOG = LoggerFactory.getLogger(Remarkings.class);
    private static final int PAGE = 50;

    private final Database database;
    private final Marks marks;
    private final Clock clock;

    private record Result(Outcome outcome, Optional<StoredMark> mark) {}

    public Remarkings(Database database, Marks marks, Clock clock) {
        this.database = database;
        this.marks = marks;
        this.clock = clock;
    }

    /** Asks, within the transaction that makes it necessary, for every attempt of a version to be marked again. */
    public Remarking ask(Stores stores, long version, Optional<Long> setCase, String reason, long by) {
        stores.audit()
                .add(new AuditEntry(
                        clock.instant(),
                        Optional.of(by),
                        "marking-again-asked",
                        "case version " + version
                                + setCase.map(s -> ", set case " + s).orElse("")));
        return stores.remarkings().add(Remarking.asked(version, setCase, reason, Optional.of(by), clock.instant()));
    }

    /** The rounds over a version, the newest first. */
    public List<Remarking> of(long version) {
        return database.direct(stores -> stores.remarkings().of(version));
    }

    /**
     * Finishes every round that was asked for.
     *
     * @param goOn asked before each attempt; when it says no, the rest is left for the next call, here or elsewhere
     */
    public void finish(BooleanSupplier goOn) {
        for (long round : database.direct(stores -> stores.remarkings().unfinished())) {
            finish(round, goOn);
        }
    }

    private void finish(long round, BooleanSupplier goOn) {
        RemarkPage page = page(round);
        while (!page.attempts().isEmpty()) {
            for (Attempt attempt : page.attempts()) {
                if (!goOn.getAsBoolean()) {
                    return;
                }
                step(round, page, attempt);
            }
            page = page(round);
        }
        database.inTransaction(stores -> {
            stores.remarkings().finish(round, clock.instant());
            return round;
        });
    }

    private RemarkPage page(long round) {
        return database.direct(stores -> {
            List<Attempt> next = stores.remarkings()
                    .find(round)
                    .filter(found -> !found.isFinished())
                    .map(found -> stores.remarkings().page(found, PAGE))
                    .orElse(List.of());
            return new RemarkPage(marks, stores, round, next);
        });
    }

    private void step(long round, RemarkPage page, Attempt attempt) {
        if (attempt.isHandedIn()) {
            Result result = result(page, attempt);
            database.inTransaction(stores -> write(stores, round, attempt, result));
        } else {
            database.inTransaction(stores -> late(stores, round, attempt));
        }
    }

    /** An attempt that was open when the page was read: it may have been handed in since, by the key before. */
    private boolean late(Stores stores, long round, Attempt open) {
        Attempt now = stores.attempts().lock(open.id()).orElseThrow();
        Result result = now.isHandedIn()
                ? result(new RemarkPage(marks, stores, round, List.of(now)), now)
                : new Result(Outcome.OPEN, Optional.empty());
        return write(stores, round, now, result);
    }

    private static boolean write(Stores stores, long round, Attempt attempt, Result result) {
        boolean taken = stores.remarkings().take(round, attempt.id(), result.outcome());
        if (taken) {
            result.mark().ifPresent(mark -> stores.marks().add(mark));
        }
        return taken;
    }

    /** One that cannot be marked keeps its mark, is counted, and does not stop the others. */
    private static Result result(RemarkPage page, Attempt attempt) {
        try {
            Optional<StoredMark> mark = page.again(attempt);
            return new Result(mark.isPresent() ? Outcome.CHANGED : Outcome.UNCHANGED, mark);
        } catch (RuntimeException e) {
            LOG.warn("attempt {} could not be marked again: {}", attempt.id(), String.valueOf(e));
            return new Result(Outcome.FAILED, Optional.empty());
        }
    }
}
