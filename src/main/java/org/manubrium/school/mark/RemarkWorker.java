package org.manubrium.school.mark;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Marks again behind the pages: whatever was left unfinished when it starts, and whatever is asked for after. */
public final class RemarkWorker implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(RemarkWorker.class);
    private static final int PATIENCE_SECONDS = 10;

    private final Remarkings remarkings;
    private final ExecutorService hand = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "marking-again");
        thread.setDaemon(true);
        return thread;
    });

    public RemarkWorker(Remarkings remarkings) {
        this.remarkings = remarkings;
    }

    /** Something may have been asked for: looks after it soon. To be called after the transaction that asked. */
    public void wake() {
        hand.execute(this::work);
    }

    private void work() {
        try {
            remarkings.finish(() -> !hand.isShutdown());
        } catch (RuntimeException e) {
            LOG.error("marking again stopped; it goes on with the next round or the next start", e);
        }
    }

    /** Ends after the attempt under way; the rest is done by another server, or when this one starts again. */
    @Override
    public void close() {
        hand.shutdown();
        try {
            if (!hand.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                hand.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
