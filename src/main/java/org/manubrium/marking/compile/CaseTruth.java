package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;
import org.manubrium.patient.Body;
import org.manubrium.reasoning.weigh.Candidate;
import org.manubrium.reasoning.weigh.Differential;

/**
 * What a case says of its patient.
 *
 * @param truths what ails the patient; for a healthy person the diagnosis that says so
 * @param rivals the other diagnoses the case asks to be told apart, each with a body that has it
 * @param next ids of the right next steps
 * @param choices the educator's own choice of what is essential
 * @param differential the same truth and rivals as they are weighed, fully developed and each as common as it is
 */
public record CaseTruth(
        String id,
        Body body,
        List<Diagnosis> truths,
        List<Rival> rivals,
        List<String> next,
        List<EssentialChoice> choices,
        Differential differential) {

    /** A truth and rivals that are as far developed as they ever are, and equally common. */
    public CaseTruth(
            String id,
            Body body,
            List<Diagnosis> truths,
            List<Rival> rivals,
            List<String> next,
            List<EssentialChoice> choices) {
        this(id, body, truths, rivals, next, choices, asTheyAre(body, truths, rivals));
    }

    private static Differential asTheyAre(Body body, List<Diagnosis> truths, List<Rival> rivals) {
        String names =
                String.join(" with ", truths.stream().map(Diagnosis::name).toList());
        List<Candidate> candidates = new ArrayList<>();
        candidates.add(new Candidate(truths.get(0).id(), names, 1, true, List.of(body)));
        rivals.forEach(rival -> candidates.add(
                new Candidate(rival.diagnosis().id(), rival.diagnosis().name(), 1, false, List.of(rival.body()))));
        return new Differential(body, candidates);
    }

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
