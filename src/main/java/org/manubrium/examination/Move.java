package org.manubrium.examination;

/** The seconds it takes to bring the patient from one position to another, the same in both directions. */
public record Move(String from, String to, int seconds, String source, String confidence) {
    /** Whether it leads from one of these positions to the other. */
    boolean joins(String one, String other) {
        return (from.equals(one) && to.equals(other)) || (from.equals(other) && to.equals(one));
    }
}
