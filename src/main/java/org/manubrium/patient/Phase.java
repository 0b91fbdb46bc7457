package org.manubrium.patient;

/** In which way a lesion is looked at: what it stops, or what it shows so long after onset. */
public enum Phase {
    /** All that is lost. */
    LOSS,
    /** The part of the loss that shows as shock: what lies below is silent. */
    SHOCK,
    /** The part of the loss that shows as release: what lies below is brisk. */
    RELEASE
}
