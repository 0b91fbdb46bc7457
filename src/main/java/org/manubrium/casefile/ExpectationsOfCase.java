package org.manubrium.casefile;

import java.util.List;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.marking.key.Expectation;
import org.manubrium.marking.key.Expectation.Expected;
import org.manubrium.patient.Body;
import org.manubrium.tables.Reference;

/** What each diagnosis of a case's differential would change in its patient, by the body model. */
final class ExpectationsOfCase {
    private final Reference reference;

    ExpectationsOfCase(Reference reference) {
        this.reference = reference;
    }

    /** Nothing unless the case asks the student beforehand. */
    List<Expectation> of(CaseFile file) {
        return file.expect()
                ? file.differential().stream().map(entry -> of(file, entry)).toList()
                : List.of();
    }

    private Expectation of(CaseFile file, ConditionUse entry) {
        Body body = file.body(reference, entry);
        List<Expected> changed = reference.examination().manoeuvres().stream()
                .filter(manoeuvre -> changed(body, manoeuvre))
                .map(manoeuvre -> new Expected(manoeuvre.id(), manoeuvre.name()))
                .toList();
        return new Expectation(entry.is(), entry.said(reference.conditions()), changed);
    }

    private boolean changed(Body body, Manoeuvre manoeuvre) {
        return reference.signs().examine(body, manoeuvre).stream()
                .anyMatch(sign -> !sign.normal().orElse(true));
    }
}
