package org.manubrium.marking.correction;

import java.util.List;
import org.manubrium.anatomy.SegmentSet;
import org.manubrium.marking.key.Form;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.KeyLine.Necessity;
import org.manubrium.marking.key.MeansKey;

/** Corrects what the key says of one item, or of the roots of one manoeuvre. */
final class LineCorrector {
    /** What is written to take an item out of the decisions on which the case turns. */
    static final String NOT_NEEDED = "not needed";

    private final Correction correction;

    LineCorrector(Correction correction) {
        this.correction = correction;
    }

    /** Roots are asked once for a manoeuvre and place, everything else of each item. */
    boolean concerns(KeyLine line) {
        String place = line.item().place();
        String about = correction.kind().equals("roots")
                ? line.item().manoeuvre() + (place.isEmpty() ? "" : "@" + place)
                : line.item().toString();
        return about.equals(correction.about());
    }

    KeyLine of(KeyLine line) {
        return switch (correction.kind()) {
            case "essential" -> line.with(necessity());
            case "roots" -> line.withForms(forms(line, this::roots));
            case "normal" -> line.withForms(forms(line, this::normal));
            case "reading" -> line.with(new ReadingCorrector(line, correction).reading());
            case "means" -> line.with(means(line.means()));
            case "site" -> line.with(line.site().accepting(correction.alternatives()));
            default -> throw new BadCorrection("The key holds no line \"" + correction.line() + "\".");
        };
    }

    private Necessity necessity() {
        if (!correction.to().strip().equals(NOT_NEEDED)) {
            throw new BadCorrection("Write \"" + NOT_NEEDED + "\" to take the manoeuvre out of what is marked.");
        }
        return new Necessity(false, "An educator decided that the case does not turn on it.");
    }

    private List<Form> forms(KeyLine line, java.util.function.UnaryOperator<Form> change) {
        return line.forms().stream()
                .map(form -> correction.holdsUnder(form.convention()) ? change.apply(form) : form)
                .toList();
    }

    private Form roots(Form form) {
        List<SegmentSet> sets = correction.alternatives().stream()
                .map(text -> SegmentSet.parse(text)
                        .orElseThrow(() ->
                                new BadCorrection("\"" + text + "\" is no set of roots. Write them as C7 or C6-C7.")))
                .toList();
        if (sets.isEmpty()) {
            throw new BadCorrection("Write the roots, as C7 or C6-C7.");
        }
        return form.withRoots(sets);
    }

    private Form normal(Form form) {
        return switch (correction.to().strip()) {
            case "normal" -> form.withNormal(true);
            case "abnormal" -> form.withNormal(false);
            default -> throw new BadCorrection("Write normal or abnormal.");
        };
    }

    /** The first alternative is what is meant, and earns all; the others are related, and earn half. */
    private MeansKey means(MeansKey key) {
        List<String> terms = correction.alternatives();
        if (terms.isEmpty()) {
            throw new BadCorrection("Write what it means.");
        }
        return new MeansKey(terms.get(0), terms.get(0), terms.subList(1, terms.size()), key.origin());
    }
}
