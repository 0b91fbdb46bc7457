package org.manubrium;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Makes something when it is first asked for, once. */
final class Lazily<T> implements Supplier<T> {
    private final Supplier<T> make;
    private @Nullable T made;

    Lazily(Supplier<T> make) {
        this.make = make;
    }

    @Override
    public synchronized T get() {
        T have = made;
        if (have == null) {
            have = make.get();
            made = have;
        }
        return have;
    }
}
