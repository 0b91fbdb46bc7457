package org.manubrium.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.marking.compile.CaseTruth;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.tables.Reference;

/**
 * One invented patient as an author describes them.
 *
 * @param difficulty how hard the author thinks it
 * @param vignette Markdown
 * @param history what the patient answers, by the id of the question
 * @param quantities the amounts at which quantities stand, each in its own unit
 * @param differential what the case asks to be told apart
 * @param expected what the author expects to be found; it changes nothing and is checked against the body
 * @param unsafe the ids of the cautions of what must not be done to this patient
 * @param expect whether the student is asked beforehand what is likely and which signs it would give
 */
public record CaseFile(
        String title,
        String slug,
        Optional<Difficulty> difficulty,
        Profile patient,
        String vignette,
        Map<String, String> history,
        List<Observation> observations,
        List<ConditionUse> conditions,
        List<LesionUse> lesions,
        Map<String, Double> quantities,
        List<ConditionUse> differential,
        Conclusion conclusion,
        List<KeyChange> essential,
        List<KeyChange> unneeded,
        List<Expected> expected,
        List<String> unsafe,
        boolean expect) {

    /**
     * Reads a case.
     *
     * @param text YAML, as {@code cases/README.md} documents it
     * @param path how problems name the file
     */
    public static CaseReading read(String text, String path, Reference reference) {
        return new CaseReader(reference, path).read(text);
    }

    /**
     * Reads a case that was checked before, in a time that does not grow with its differential: only what can be read is
     * checked, not what it gives away or leaves undecided.
     */
    public static CaseReading reread(String text, String path, Reference reference) {
        return new CaseReader(reference, path).reread(text);
    }

    /** What the key is compiled from. */
    public CaseTruth truth(Reference reference) {
        return new Truth(this, reference).caseTruth();
    }

    /** The patient's body. */
    public Body body(Reference reference) {
        return Bodies.of(reference, patient.person(), ailments(reference), quantities);
    }

    /** The same patient if a rival diagnosis were true: what is new is replaced by it, old leftovers stay. */
    public Body body(Reference reference, ConditionUse rival) {
        List<Ailment> ailments = new ArrayList<>(
                ailments(reference).stream().filter(Ailment::old).toList());
        ailments.add(rival.ailment(reference.conditions()));
        return Bodies.of(reference, patient.person(), ailments, Map.of());
    }

    /** The patient's body if everything new were fully developed; what is old, and quantities, stand as they are. */
    Body developed(Reference reference) {
        List<Ailment> ailments = new ArrayList<>();
        conditions.forEach(use ->
                ailments.add((use.old(reference.conditions()) ? use : use.atFull()).ailment(reference.conditions())));
        lesions.forEach(
                lesion -> ailments.add((lesion.old() ? lesion : lesion.atFull()).ailment(reference.conditions())));
        return Bodies.of(reference, patient.person(), ailments, quantities);
    }

    /** The conditions that are not old leftovers. */
    public List<ConditionUse> current(Reference reference) {
        return conditions.stream().filter(c -> !c.old(reference.conditions())).toList();
    }

    private List<Ailment> ailments(Reference reference) {
        List<Ailment> ailments = new ArrayList<>();
        conditions.forEach(condition -> ailments.add(condition.ailment(reference.conditions())));
        lesions.forEach(lesion -> ailments.add(lesion.ailment(reference.conditions())));
        return ailments;
    }
}
