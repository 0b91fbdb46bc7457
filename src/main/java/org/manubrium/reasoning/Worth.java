package org.manubrium.reasoning;

/** What a manoeuvre is worth in one case. */
public enum Worth {
    /** The shortest examination that suffices holds it. */
    ESSENTIAL,
    /** By itself it would tell something. */
    USEFUL,
    /** It tells next to nothing here. */
    UNNEEDED,
    /** It tells next to nothing here, and can hurt or embarrass. */
    HARMFUL
}
