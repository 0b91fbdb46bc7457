package org.manubrium.bench;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

/** Runs something over and over in several threads and counts. */
final class Load {
    private static final int THREADS = 8;
    private static final double WARM_UP = 3;
    private static final double MEASURED = 6;

    private Load() {}

    /** Times a second, over all threads, after a warm-up; each thread makes its own worker. */
    static double perSecond(IntFunction<Runnable> worker) {
        run(worker, WARM_UP);
        return run(worker, MEASURED) / MEASURED;
    }

    private static long run(IntFunction<Runnable> worker, double seconds) {
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        long end = System.nanoTime() + (long) (seconds * 1e9);
        List<Future<Long>> counts = new ArrayList<>();
        for (int i = 0; i < THREADS; i++) {
            Runnable work = worker.apply(i);
            counts.add(threads.submit(() -> {
                long done = 0;
                while (System.nanoTime() < end) {
                    work.run();
                    done++;
                }
                return done;
            }));
        }
        threads.shutdown();
        return counts.stream().mapToLong(Load::await).sum();
    }

    private static long await(Future<Long> count) {
        try {
            return count.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /**
     * Milliseconds that the median run of many takes of the processor, after as many to warm up: on a machine that has
     * other things to do the clock says little.
     */
    static double medianMillis(int runs, Runnable work) {
        for (int i = 0; i < runs; i++) {
            work.run();
        }
        double[] taken = new double[runs];
        for (int i = 0; i < runs; i++) {
            long start = cpuNanos();
            work.run();
            taken[i] = (cpuNanos() - start) / 1e6;
        }
        java.util.Arrays.sort(taken);
        return taken[runs / 2];
    }

    private static long cpuNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
