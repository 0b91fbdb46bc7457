package org.manubrium.patient;

/** What is truly there to be read, before it is put on anyone's scale. */
public sealed interface Finding {
    /** An amount of a quantity that is read in grades: 1 is what an average healthy person shows. */
    record Graded(String quantity, double amount) implements Finding {}

    /** A number with its unit. */
    record Measured(double value, String unit) implements Finding {}

    /** One of a set of words, by its code on the manoeuvre's scale. */
    record Seen(String code) implements Finding {}
}
