package org.manubrium.school.mark;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import org.manubrium.school.mark.RemarkPage.Result;
import org.manubrium.store.Attempt;
import org.manubrium.store.AuditEntry;
import org.manubrium.store.Database;
import org.manubrium.store.Remarking;
import org.manubrium.store.Stores;

/**
 * Marks again, one transaction for each attempt. How far a round has come is written in the same transaction as the mark,
 * and holds the round, so that a crash loses and repeats nothing and several servers can share one round.
 */
public final class Remarkings {
    private static final int PAGE = 50;

    private final Database database;
    private final Marks marks;
    private final Clock clock;

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

    /** While one page is written the next is read and marked: the two take about the same time. */
    private void finish(long round, BooleanSupplier goOn) {
        RemarkPage page = page(round, 0);
        while (!page.attempts().isEmpty()) {
            long last = page.attempts().get(page.attempts().size() - 1).id();
            CompletableFuture<RemarkPage> next = CompletableFuture.supplyAsync(() -> page(round, last));
            boolean written = write(round, page, goOn);
            page = next.join();
            if (!written) {
                return;
            }
        }
        database.inTransaction(stores -> {
            stores.remarkings().finish(round, clock.instant());
            return round;
        });
    }

    /** @param after attempts with a greater id only */
    private RemarkPage page(long round, long after) {
        return database.direct(stores -> {
            List<Attempt> next = stores.remarkings()
                    .find(round)
                    .filter(found -> !found.isFinished())
                    .map(found -> stores.remarkings().page(found, after, PAGE))
                    .orElse(List.of());
            return new RemarkPage(marks, stores, round, next);
        });
    }

    /** @return false if it was told to stop */
    private boolean write(long round, RemarkPage page, BooleanSupplier goOn) {
        for (Attempt attempt : page.attempts()) {
            if (!goOn.getAsBoolean()) {
                return false;
            }
            database.inTransaction(stores -> attempt.isHandedIn()
                    ? write(stores, round, attempt, page.result(attempt))
                    : late(stores, round, attempt));
        }
        return true;
    }

    /** An attempt that was open when the page was read: it may have been handed in since, by the key before. */
    private boolean late(Stores stores, long round, Attempt open) {
        Attempt now = stores.attempts().lock(open.id()).orElseThrow();
        return write(stores, round, now, new RemarkPage(marks, stores, round, List.of(now)).result(now));
    }

    private static boolean write(Stores stores, long round, Attempt attempt, Result result) {
        boolean taken = stores.remarkings().take(round, attempt.id(), result.outcome());
        if (taken) {
            result.mark().ifPresent(mark -> stores.marks().add(mark));
        }
        return taken;
    }
}
