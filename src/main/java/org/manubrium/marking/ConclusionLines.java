package org.manubrium.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.credit.Credit;
import org.manubrium.marking.credit.DifferentialRule;
import org.manubrium.marking.credit.Guess;
import org.manubrium.marking.credit.NextRule;
import org.manubrium.marking.credit.SiteRule;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.ConclusionKey;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;
import org.manubrium.marking.key.SiteKey;

/** Where the lesion lies, what ails the patient and what to do next. */
final class ConclusionLines {
    private static final String NONE = "none";

    private final Attempt attempt;

    ConclusionLines(Attempt attempt) {
        this.attempt = attempt;
    }

    List<Line> of(ConclusionKey key) {
        List<Line> lines = new ArrayList<>();
        site(lines, key);
        List<String> named = said("differential");
        if (!key.truths().isEmpty()) {
            String truth = Say.list(key.truths().stream().map(Diagnosis::name).toList());
            lines.add(line(
                    "differential",
                    "What ails the patient",
                    named.stream().map(n -> spelled(n, key)).toList(),
                    truth,
                    key,
                    () -> DifferentialRule.credit(Guess.parse(named), key.truths())));
        }
        List<String> next = said("next");
        if (!key.next().isEmpty()) {
            lines.add(line(
                    "next",
                    "What to do next",
                    next,
                    String.join(" or ", key.next()),
                    key,
                    () -> NextRule.credit(next, key.next())));
        }
        return lines;
    }

    /** Where nothing is damaged no site is asked for, but naming one costs. */
    private void site(List<Line> lines, ConclusionKey key) {
        List<String> said = said("site");
        String asked = "Where the lesion lies";
        if (!key.sites().isEmpty()) {
            String places = Say.list(key.sites().stream().map(SiteKey::place).toList());
            lines.add(line("site", asked, said, places, key, () -> SiteRule.credit(said, key.sites())));
        } else if (!said.isEmpty() && !said.equals(List.of(NONE))) {
            lines.add(line(
                    "site", asked, said, "nowhere", key, () -> Credit.none("A lesion was named where there is none.")));
        }
    }

    /** A guess by the diagnosis's name, with its confidence. */
    private static String spelled(String named, ConclusionKey key) {
        Guess guess = Guess.parse(named);
        String name = key.differential().stream()
                .filter(diagnosis -> diagnosis.accepts(guess.diagnosis()))
                .map(Diagnosis::name)
                .findFirst()
                .orElse(guess.diagnosis());
        return name
                + (guess.confidence().isPresent() ? " (" + guess.confidence().getAsInt() + " per cent)" : "");
    }

    private List<String> said(String question) {
        return attempt.answer(Event.CONCLUSION, question);
    }

    private static Line line(
            String id, String asked, List<String> said, String truth, ConclusionKey key, Supplier<Credit> rule) {
        Credit credit = said.isEmpty() ? Credit.none("It was not answered.") : rule.get();
        return new Line(
                "conclusion/" + id,
                DomainName.CONCLUSION,
                asked,
                Say.list(said),
                truth,
                credit.amount(),
                credit.why(),
                key.origin());
    }
}
