package org.manubrium.school.mark;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.manubrium.store.Attempt;
import org.manubrium.store.AuditEntry;
import org.manubrium.store.Database;
import org.manubrium.store.Remarking;
import org.manubrium.store.Stores;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Marks again, one transaction for each attempt. How far a round has come is written in the same transaction as the mark,
 * under a lock of the round, so that a crash loses and repeats nothing and several servers can share one round.
 */
public final class Remarkings {
    private static final Logger LOG = LoggerFactory.getLogger(Remarkings.class);

    private final Database database;
    private final Marks marks;
    private final Clock clock;

    /** How one step of a round went. */
    private enum Step {
        GOES_ON,
        DONE
    }

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
            Step step = Step.GOES_ON;
            while (step == Step.GOES_ON && goOn.getAsBoolean()) {
                step = step(round);
            }
        }
    }

    /** One attempt. One that cannot be marked keeps its mark, is counted, and does not stop the others. */
    private Step step(long round) {
        try {
            return database.inTransaction(stores -> step(stores, round, Optional.empty()));
        } catch (Unmarkable unmarkable) {
            LOG.warn(
                    "attempt {} could not be marked again: {}",
                    unmarkable.attempt,
                    String.valueOf(unmarkable.getCause()));
            return database.inTransaction(stores -> step(stores, round, Optional.of(unmarkable.attempt)));
        }
    }

    private Step step(Stores stores, long id, Optional<Long> unmarkable) {
        Optional<Remarking> held = stores.remarkings().lock(id).filter(round -> !round.isFinished());
        if (held.isEmpty()) {
            return Step.DONE;
        }
        Remarking round = held.get();
        Optional<Attempt> next = stores.remarkings().next(round);
        if (next.isEmpty()) {
            stores.remarkings().finish(id, clock.instant());
            return Step.DONE;
        }
        Attempt attempt = next.get();
        boolean skip = unmarkable.filter(a -> a == attempt.id()).isPresent();
        stores.remarkings().reach(skip ? round.past(attempt.id(), 0, 0, 1) : mark(stores, round, attempt));
        return Step.GOES_ON;
    }

    /** What is not handed in yet will be marked by the new key when it is. */
    private Remarking mark(Stores stores, Remarking round, Attempt attempt) {
        if (!attempt.isHandedIn()) {
            return round.past(attempt.id(), 0, 0, 0);
        }
        boolean changed = again(stores, attempt, round.id());
        return round.past(attempt.id(), changed ? 1 : 0, changed ? 0 : 1, 0);
    }

    private boolean again(Stores stores, Attempt attempt, long round) {
        try {
            return marks.again(stores, attempt, round);
        } catch (RuntimeException e) {
            throw new Unmarkable(attempt.id(), e);
        }
    }

    private static final class Unmarkable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final long attempt;

        Unmarkable(long attempt, RuntimeException cause) {
            super(cause);
            this.attempt = attempt;
        }
    }
}
