package org.manubrium;

import java.util.List;

/** Does one thing after another while the server is open already. */
final class AfterOpening implements AutoCloseable {
    private final Thread thread;
    private volatile boolean closed;

    AfterOpening(List<Runnable> work) {
        this.thread =
                new Thread(() -> work.stream().takeWhile(next -> !closed).forEach(Runnable::run), "after-opening");
        thread.setDaemon(true);
    }

    void begin() {
        thread.start();
    }

    /** Waits for what is being done and leaves out the rest. */
    @Override
    public void close() {
        closed = true;
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
