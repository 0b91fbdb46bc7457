package org.manubrium.examination;

/** Whether a sign is read in grades, in numbers with a unit, or as one of a set of words. */
public enum ReadingKind {
    GRADED,
    MEASURED,
    CHOSEN
}
