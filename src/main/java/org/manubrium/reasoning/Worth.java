package org.manubrium.reasoning;

/** What a manoeuvre is worth in one case. */
public enum Worth {
    /** The case turns on it: it is in the shortest examination that suffices, or confirms it in another system. */
    ESSENTIAL,
    /** By itself it would tell something. */
    USEFUL,
    /** It tells next to nothing here. */
    UNNEEDED,
    /** It tells next to nothing here, and can hurt or embarrass. */
    HARMFUL
}
