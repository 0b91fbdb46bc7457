package org.manubrium.store;

/** What became of an event that was to be appended. */
public sealed interface Appended {
    /** It is stored, now. */
    record Added(StoredEvent event) implements Appended {}

    /** An event with this client key was there already; nothing was added. */
    record Repeated(StoredEvent event) implements Appended {}

    /** The attempt has been handed in; nothing was added. */
    record HandedIn(Attempt attempt) implements Appended {}

    /** There is no such attempt. */
    record NoAttempt(long attemptId) implements Appended {}
}
