package org.manubrium.marking.compile;

import java.util.List;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;
import org.manubrium.patient.Body;

/**
 * What a case says of its patient.
 *
 * @param truths what ails the patient; for a healthy person the diagnosis that says so
 * @param rivals the other diagnoses the case asks to be told apart, each with a body that has it
 * @param next ids of the right next steps
 * @param choices the educator's own choice of what is essential
 */
public record CaseTruth(
        String id,
        Body body,
        List<Diagnosis> truths,
        List<Rival> rivals,
        List<String> next,
        List<EssentialChoice> choices) {

    /** A diagnosis that is not true of the patient, and the same person with it. */
    public record Rival(Diagnosis diagnosis, Body body) {}

    /**
     * An educator's word on whether a manoeuvre is essential.
     *
     * @param place one of the manoeuvre's places, blank for all
     */
    public record EssentialChoice(String manoeuvre, String place, boolean essential, String reason) {
        boolean touches(String otherManoeuvre, String otherPlace) {
            return manoeuvre.equals(otherManoeuvre) && (place.isBlank() || place.equals(otherPlace));
        }
    }
}
