package org.manubrium.marking.correction;

import java.util.List;
import java.util.stream.Stream;
import org.manubrium.marking.key.ConclusionKey;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;
import org.manubrium.marking.key.SiteKey;

/** Corrects what should stand at the end. */
final class ConclusionCorrector {
    private final ConclusionKey key;

    ConclusionCorrector(ConclusionKey key) {
        this.key = key;
    }

    ConclusionKey with(Correction correction) {
        List<String> words = correction.alternatives();
        if (words.isEmpty()) {
            throw new BadCorrection("Write what is right.");
        }
        return switch (correction.about()) {
            case "next" -> made(key.sites(), key.truths(), words);
            case "site" -> made(sites(words), key.truths(), key.next());
            case "differential" -> made(key.sites(), truths(words), key.next());
            default -> throw new BadCorrection("The key holds no line \"" + correction.line() + "\".");
        };
    }

    private List<SiteKey> sites(List<String> words) {
        if (key.sites().size() != 1) {
            throw new BadCorrection("The places of a patient with several lesions, or none, cannot be corrected here:"
                    + " revise the case.");
        }
        return List.of(key.sites().get(0).accepting(words));
    }

    /** Every truth takes the words as names of the same thing; a truth of its own is made by revising the case. */
    private List<Diagnosis> truths(List<String> words) {
        if (key.truths().size() != 1) {
            throw new BadCorrection("A patient with several diagnoses cannot be corrected here: revise the case.");
        }
        Diagnosis truth = key.truths().get(0);
        List<String> all = Stream.concat(truth.alternatives().stream(), words.stream())
                .filter(word -> !word.equals(truth.id()))
                .distinct()
                .toList();
        return List.of(new Diagnosis(truth.id(), truth.name(), all));
    }

    private ConclusionKey made(List<SiteKey> sites, List<Diagnosis> truths, List<String> next) {
        return new ConclusionKey(sites, truths, key.differential(), next, key.origin(), key.expected());
    }
}
