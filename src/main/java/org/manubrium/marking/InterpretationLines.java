package org.manubrium.marking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.manubrium.anatomy.SegmentSet;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.credit.Credit;
import org.manubrium.marking.credit.MeansRule;
import org.manubrium.marking.credit.RootsRule;
import org.manubrium.marking.credit.SiteRule;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Form;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.Origin;
import org.manubrium.marking.key.SiteKey;

/**
 * What the essential signs were taken to mean: normal or not for each item, roots once for each manoeuvre and place, and
 * for each abnormal item what it means in this patient and where its pathway is damaged.
 */
final class InterpretationLines {
    private static final String ROOTS = "roots";
    private static final String MEANS = "means";
    private static final String SITE = "site";
    private static final String NONE = "none";

    private final String convention;
    private final Attempt attempt;
    private final Judgement judgement;
    private final Checked checked;

    InterpretationLines(String convention, Attempt attempt, Checked checked) {
        this.convention = convention;
        this.attempt = attempt;
        this.checked = checked;
        this.judgement = new Judgement(convention, attempt);
    }

    List<Line> of(CompiledKey key) {
        List<Line> lines = new ArrayList<>();
        for (KeyLine line : key.essentials()) {
            if (line.asks(Judgement.NORMAL)) {
                lines.add(normal(line, key));
            }
            boolean abnormal = !line.form(convention).normal();
            if (abnormal && line.asks(MEANS) && !line.means().term().isEmpty()) {
                lines.add(means(line));
            }
            if (abnormal && line.asks(SITE) && !line.site().equals(SiteKey.NONE)) {
                lines.add(site(line));
            }
        }
        manoeuvres(key).values().forEach(group -> roots(group).ifPresent(lines::add));
        return lines;
    }

    private static Map<String, List<KeyLine>> manoeuvres(CompiledKey key) {
        Map<String, List<KeyLine>> groups = new LinkedHashMap<>();
        key.essentials().stream()
                .filter(line -> line.asks(ROOTS))
                .forEach(line -> groups.computeIfAbsent(group(line), g -> new ArrayList<>())
                        .add(line));
        return groups;
    }

    private static String group(KeyLine line) {
        String place = line.item().place();
        return line.item().manoeuvre() + (place.isEmpty() ? "" : "@" + place);
    }

    private Line normal(KeyLine line, CompiledKey key) {
        boolean truth = judgement.truth(line, key);
        List<String> said = attempt.answer(line.item(), Judgement.NORMAL);
        Form form = line.form(convention);
        Credit credit = answered(
                line,
                said,
                () -> said.equals(List.of(Say.normal(truth)))
                        ? Credit.full("Judged rightly.")
                        : Credit.none(truth ? "It would pass as normal." : "It is not normal."));
        return line(
                line,
                Judgement.NORMAL,
                "Normal or not: " + line.label(),
                said,
                Say.normal(truth),
                credit,
                form.normalOrigin());
    }

    private Line means(KeyLine line) {
        List<String> said = attempt.answer(line.item(), MEANS);
        Credit credit = answered(
                line,
                said,
                () -> said.size() == 1
                        ? MeansRule.credit(said.get(0), line.means())
                        : Credit.none("One meaning is asked for; several were given."));
        return line(
                line,
                MEANS,
                "What it means: " + line.label(),
                said,
                line.means().text(),
                credit,
                line.means().origin());
    }

    private Line site(KeyLine line) {
        List<String> said = attempt.answer(line.item(), SITE);
        Credit credit = answered(line, said, () -> SiteRule.credit(said, List.of(line.site())));
        return line(
                line,
                SITE,
                "Where the fault lies: " + line.label(),
                said,
                line.site().place(),
                credit,
                line.origin());
    }

    private Credit answered(KeyLine line, List<String> said, Supplier<Credit> rule) {
        if (said.isEmpty()) {
            return Credit.none("It was not answered.");
        }
        return attempt.probed(line) ? rule.get() : Credit.none("It was answered without having been examined.");
    }

    private Optional<Line> roots(List<KeyLine> group) {
        KeyLine first = group.get(0);
        Form form = first.form(convention);
        if (form.roots().isEmpty()) {
            return Optional.empty();
        }
        List<String> said = group.stream()
                .map(line -> attempt.answer(line.item(), ROOTS))
                .filter(answer -> !answer.isEmpty())
                .findFirst()
                .orElse(List.of());
        String key = String.join(
                " or ", form.roots().stream().map(SegmentSet::toString).toList());
        return Optional.of(new Line(
                "roots/" + group(first),
                DomainName.INTERPRETATION,
                "Roots: " + first.name(),
                Say.list(said),
                key,
                rootCredit(said, first).amount(),
                rootCredit(said, first).why(),
                form.rootsOrigin(),
                checked.standing(List.of(form.rootsOrigin()))));
    }

    private Credit rootCredit(List<String> said, KeyLine line) {
        if (said.isEmpty()) {
            return Credit.none("It was not answered.");
        }
        Optional<SegmentSet> given = said.equals(List.of(NONE))
                ? Optional.of(new SegmentSet(Set.of()))
                : SegmentSet.parse(String.join(" ", said));
        return given.map(set -> RootsRule.credit(set, line.form(convention).roots(), elsewhere(set, line)))
                .orElseGet(() -> Credit.none("These are no root levels."));
    }

    private static boolean elsewhere(SegmentSet set, KeyLine line) {
        return line.published().stream().anyMatch(p -> p.roots().equals(set));
    }

    private Line line(
            KeyLine line, String question, String asked, List<String> said, String key, Credit credit, Origin origin) {
        return new Line(
                question + "/" + line.item(),
                DomainName.INTERPRETATION,
                asked,
                Say.list(said),
                key,
                credit.amount(),
                credit.why(),
                origin,
                checked.standing(line.behind(origin)));
    }
}
