package org.manubrium;

import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * Runs a check on many random inputs. Seeds count up from a base, so that a run can be repeated; a failure names its seed.
 * Another base can be tried with {@code -Dforall.base=…}, and one seed alone with {@link #seed}.
 */
public final class ForAll {
    private static final long BASE = Long.getLong("forall.base", 20_000L);

    private ForAll() {}

    /** Runs the check with {@code times} generators, each of its own seed. */
    public static void seeds(int times, Consumer<RandomGenerator> check) {
        for (long seed = BASE; seed < BASE + times; seed++) {
            seed(seed, check);
        }
    }

    /** Runs the check with one seed. */
    public static void seed(long seed, Consumer<RandomGenerator> check) {
        try {
            check.accept(RandomGeneratorFactory.of("L64X128MixRandom").create(seed));
        } catch (AssertionError | RuntimeException e) {
            throw new AssertionError("fails with seed " + seed + ": " + e.getMessage(), e);
        }
    }
}
