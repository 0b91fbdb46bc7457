package org.manubrium.school.bedside;

/** What became of an event. */
public sealed interface Taken {
    /** It is stored, now or by an earlier request with the same key. */
    record Stored(Shown event) implements Taken {}

    /** The attempt was closed before it came. */
    record Closed() implements Taken {}

    /** There is no such attempt of this student. */
    record NotYours() implements Taken {}

    /** It does not fit the examination; the sentence says what was expected. */
    record Unfit(String sentence) implements Taken {}
}
