package org.manubrium.store;

/** What is done in one scope of the database. It may be run again after a conflict, so it does nothing else. */
@FunctionalInterface
public interface Work<T> {
    T with(Stores stores);
}
