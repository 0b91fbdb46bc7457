package org.manubrium.marking.compile;

import java.util.List;
import java.util.stream.Stream;
import org.manubrium.marking.key.MeansKey;
import org.manubrium.marking.key.Origin;
import org.manubrium.patient.Meaning;
import org.manubrium.patient.MeaningTerm;
import org.manubrium.patient.Sign;

/** Makes the keys to what signs mean. */
final class Meant {
    private static final MeansKey NOTHING_TO_ASK = new MeansKey("", "", List.of(), new Origin("", ""));

    private final List<MeaningTerm> terms;
    private final List<RelatedTerm> related;

    Meant(List<MeaningTerm> terms, List<RelatedTerm> related) {
        this.terms = List.copyOf(terms);
        this.related = List.copyOf(related);
    }

    /** A normal sign, and one that no tabled term explains, has no meaning to be asked for. */
    MeansKey of(Sign sign) {
        Meaning meaning = sign.meaning();
        if (sign.normal().orElse(true)) {
            return NOTHING_TO_ASK;
        }
        return terms.stream()
                .filter(term -> term.id().equals(meaning.term()))
                .findFirst()
                .map(term -> new MeansKey(term.id(), meaning.text(), near(term.id()), Unopened.of(term)))
                .orElse(NOTHING_TO_ASK);
    }

    private List<String> near(String term) {
        return related.stream()
                .flatMap(r -> r.term().equals(term)
                        ? Stream.of(r.related())
                        : r.related().equals(term) ? Stream.of(r.term()) : Stream.of())
                .distinct()
                .toList();
    }
}
