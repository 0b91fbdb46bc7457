package org.manubrium.marking;

import java.util.Locale;

/** The four domains of a mark, in the order in which they are shown. */
public enum DomainName {
    /** The manoeuvres on which the case turns, done in a way that could show the sign. */
    ESSENTIAL,
    /** Whether what was there was seen. */
    READING,
    /** What it was taken to mean. */
    INTERPRETATION,
    /** Where, what, and what next. */
    CONCLUSION;

    /** The word in files and on pages. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
