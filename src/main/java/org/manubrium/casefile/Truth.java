package org.manubrium.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.manubrium.marking.compile.CaseTruth;
import org.manubrium.marking.compile.CaseTruth.EssentialChoice;
import org.manubrium.marking.compile.CaseTruth.Rival;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.reasoning.weigh.Candidate;
import org.manubrium.reasoning.weigh.Differential;
import org.manubrium.tables.Reference;

/** What a case says is true of its patient, and what it asks to be told apart from that. */
final class Truth {
    private final CaseFile file;
    private final Reference reference;
    private final List<ConditionUse> current;
    private final Body body;

    Truth(CaseFile file, Reference reference) {
        this.file = file;
        this.reference = reference;
        this.current = file.current(reference);
        this.body = file.body(reference);
    }

    Body body() {
        return body;
    }

    /** Whether an entry of the differential is the truth itself. */
    boolean holds(ConditionUse entry) {
        if (!current.isEmpty()) {
            return current.stream().anyMatch(entry::sameAs);
        }
        return healthy() ? entry.condition(reference.conditions()).effects().isEmpty() : accepted(entry.is());
    }

    private boolean accepted(String id) {
        return file.conclusion().diagnosis().contains(id);
    }

    private boolean healthy() {
        return fresh().isEmpty();
    }

    private List<Ailment> fresh() {
        return body.ailments().stream().filter(a -> !a.old()).toList();
    }

    /** What the differential must hold, in words; what it need not hold is left out. */
    List<String> missing() {
        if (current.isEmpty()) {
            boolean stands = file.differential().stream().anyMatch(this::holds);
            boolean wanted = healthy() || !file.conclusion().diagnosis().isEmpty();
            return wanted && !stands ? diagnoses().stream().map(Diagnosis::name).toList() : List.of();
        }
        return current.stream()
                .filter(use -> file.differential().stream().noneMatch(use::sameAs))
                .map(use -> use.said(reference.conditions()))
                .toList();
    }

    CaseTruth caseTruth() {
        List<Rival> rivals = file.differential().stream()
                .filter(entry -> !holds(entry))
                .map(entry -> new Rival(
                        new Diagnosis(entry.is(), entry.said(reference.conditions()), List.of()),
                        file.body(reference, entry)))
                .toList();
        List<EssentialChoice> choices = Stream.concat(
                        file.essential().stream().map(change -> choice(change, true)),
                        file.unneeded().stream().map(change -> choice(change, false)))
                .toList();
        return new CaseTruth(
                file.slug(), body, diagnoses(), rivals, file.conclusion().next(), choices, differential());
    }

    /** Everything fully developed, so that how ill the patient is gives nothing away. */
    private Differential differential() {
        List<Diagnosis> truths = diagnoses();
        List<Candidate> candidates = new ArrayList<>();
        candidates.add(new Candidate(
                truths.get(0).id(),
                String.join(" with ", truths.stream().map(Diagnosis::name).toList()),
                commonness(),
                true,
                List.of(file.developed(reference))));
        file.differential().stream().filter(entry -> !holds(entry)).forEach(entry -> {
            Condition condition = entry.condition(reference.conditions());
            candidates.add(new Candidate(
                    entry.is(),
                    entry.said(reference.conditions()),
                    condition.prior(),
                    false,
                    List.of(file.body(reference, entry.atFull()))));
        });
        return new Differential(body, candidates);
    }

    /** How common the truth is among what an educator would set; of several conditions the rarest counts. */
    private double commonness() {
        return file.differential().stream()
                .filter(this::holds)
                .mapToDouble(entry -> entry.condition(reference.conditions()).prior())
                .min()
                .orElseGet(() -> reference.conditions().all().stream()
                        .mapToDouble(Condition::prior)
                        .average()
                        .orElse(1));
    }

    private static EssentialChoice choice(KeyChange change, boolean essential) {
        return new EssentialChoice(change.manoeuvre(), change.place().orElse(""), essential, change.because());
    }

    private List<Diagnosis> diagnoses() {
        if (!current.isEmpty()) {
            List<String> own = current.stream().map(ConditionUse::is).toList();
            List<String> others = file.conclusion().diagnosis().stream()
                    .filter(id -> !own.contains(id))
                    .toList();
            return current.stream()
                    .map(use -> new Diagnosis(use.is(), use.said(reference.conditions()), named(use.is(), others)))
                    .toList();
        }
        List<String> said = healthy()
                ? reference.conditions().all().stream()
                        .filter(c -> c.effects().isEmpty())
                        .map(Condition::id)
                        .toList()
                : file.conclusion().diagnosis();
        return said.isEmpty()
                ? fresh().stream()
                        .map(a -> new Diagnosis(a.name(), a.name(), List.of()))
                        .toList()
                : List.of(new Diagnosis(said.get(0), name(said.get(0)), named(said.get(0), said)));
    }

    /** What counts as the same: the other ids that are accepted, and all of them by name. */
    private List<String> named(String id, List<String> others) {
        List<String> found = new ArrayList<>(List.of(name(id)));
        others.stream().filter(other -> !other.equals(id)).forEach(other -> {
            found.add(other);
            found.add(name(other));
        });
        return found;
    }

    private String name(String id) {
        Optional<Condition> condition = reference.conditions().condition(id);
        return condition.map(Condition::name).orElse(id);
    }
}
