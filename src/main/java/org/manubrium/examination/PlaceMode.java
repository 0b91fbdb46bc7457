package org.manubrium.examination;

/** Whether a manoeuvre gives one reading, one for each point that is tried, or several at once. */
public enum PlaceMode {
    ONE,
    POINTS,
    TOGETHER
}
