package org.manubrium.school.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.manubrium.anatomy.SegmentSet;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Form;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.patient.sign.Signs;
import org.manubrium.school.bedside.Patients;
import org.manubrium.school.mark.Lessons.Taught;
import org.manubrium.store.Attempt;
import org.manubrium.store.Stores;

/** Gathers what a marked attempt teaches beside its lines. */
public final class Teaching {
    private static final int TO_DRILL = 3;

    private final KeysInForce keys;
    private final Patients patients;
    private final ToDrill toDrill;
    private final Conventions conventions;
    private final Apart apart;

    public Teaching(KeysInForce keys, Patients patients, ToDrill toDrill, Conventions conventions, Signs signs) {
        this.keys = keys;
        this.patients = patients;
        this.toDrill = toDrill;
        this.conventions = conventions;
        this.apart = new Apart(signs);
    }

    Lessons of(Stores stores, Attempt attempt, String convention) {
        CompiledKey key = keys.of(stores, attempt.caseVersionId());
        String said = said(stores, attempt);
        boolean right = key.conclusion().sites().stream()
                .anyMatch(site -> site.steps(said).orElse(1) == 0);
        return new Lessons(
                said,
                Pathways.of(key, said),
                said.isBlank() || right ? List.of() : apart.findings(key, patients.body(stores, attempt), said),
                elsewhere(key, convention),
                toDrill.of(stores, attempt).stream()
                        .limit(TO_DRILL)
                        .map(ToDrill.Wish::because)
                        .toList());
    }

    /** The last place that was named in the conclusion; blank for none and for words outside the terms. */
    private static String said(Stores stores, Attempt attempt) {
        String said = "";
        for (var logged : Marks.logged(stores, attempt)) {
            if (logged.event() instanceof Event.Answered answered
                    && answered.item().equals(Event.CONCLUSION)
                    && answered.question().equals("site")) {
                said = answered.answer().stream().findFirst().orElse("");
            }
        }
        return said.equals("none") || said.startsWith("other:") ? "" : said;
    }

    private List<Taught> elsewhere(CompiledKey key, String convention) {
        List<Taught> found = new ArrayList<>();
        for (KeyLine line : key.essentials()) {
            Form here = line.form(convention);
            List<Form> others = line.forms().stream()
                    .filter(form ->
                            !form.roots().equals(here.roots()) && !form.roots().isEmpty())
                    .toList();
            boolean told = found.stream().anyMatch(t -> t.asked().equals(line.name()));
            if (!here.roots().isEmpty() && !others.isEmpty() && !told) {
                found.add(new Taught(line.name(), sets(here), named(others)));
            }
        }
        return found;
    }

    private String named(List<Form> forms) {
        return forms.stream()
                .map(form -> sets(form) + " (" + conventions.name(form.convention()) + ")")
                .collect(Collectors.joining("; "));
    }

    private static String sets(Form form) {
        return form.roots().stream().map(SegmentSet::toString).collect(Collectors.joining(" or "));
    }
}
