package org.manubrium.examination;

import java.util.List;

/**
 * One thing an examiner does.
 *
 * @param positions where it can be done, the usual one first
 * @param sided whether it is done on the right and on the left
 * @param places what its readings are about; empty if there is only one
 * @param seconds the time it takes on one side, an estimate
 * @param intimacy none, private or intimate
 * @param when always, symptom or finding: when it is worth doing
 * @param cautions ids of the cautions that stand beside it
 * @param reads which sign it reads, as "system:part"
 * @param scale the scale on which it is read unless a teaching convention names another; blank for a measurement
 * @param tolerance how far a measured reading may be off and still earn full credit, in {@code unit}
 * @param questions what is asked of it: normal, roots, site, means
 */
public record Manoeuvre(
        String id,
        String name,
        String system,
        List<String> positions,
        boolean sided,
        PlaceMode placeMode,
        List<Place> places,
        int seconds,
        String equipment,
        String intimacy,
        String technique,
        String goesWrong,
        String when,
        List<String> cautions,
        List<Variant> variants,
        String reads,
        ReadingKind kind,
        String scale,
        String unit,
        double tolerance,
        List<String> questions,
        String source,
        String confidence) {

    /** Whether it may be put off with a reason. */
    public boolean intimate() {
        return intimacy.equals("intimate");
    }

    /** The reader's name, before the colon of {@link #reads}. */
    public String reader() {
        return reads.substring(0, reads.indexOf(':'));
    }

    /** What the reader reads, after the colon. */
    public String part() {
        return reads.substring(reads.indexOf(':') + 1);
    }
}
