package org.manubrium.examination;

/** What was read off a sign, by the model or by a student. */
public sealed interface Reading {
    /** A level of a scale. */
    record Grade(String grade, String scale) implements Reading {}

    /** A number with its unit. */
    record Amount(double value, String unit) implements Reading {}

    /** One of a set of words. */
    record Seen(String seen) implements Reading {}
}
