package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.manubrium.anatomy.Pathway;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.marking.compile.CaseWeigher.Weighed;
import org.manubrium.marking.compile.Essentials.Unit;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.ConclusionKey;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;
import org.manubrium.marking.key.DeferralRule;
import org.manubrium.marking.key.HarmRule;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.KeyLine.Necessity;
import org.manubrium.marking.key.Origin;
import org.manubrium.marking.key.Showing;
import org.manubrium.patient.Conditions;
import org.manubrium.patient.sign.Signs;
import org.manubrium.patient.sign.Strand;
import org.manubrium.reasoning.Verdict;
import org.manubrium.reasoning.Weighing;
import org.manubrium.reasoning.Worth;

/** Freezes what a case asks into a key. The same case and tables always give the same key. */
public final class KeyCompiler {
    /** That a case's conclusion is right follows from how the case was made, not from a source. */
    private static final Origin BY_DESIGN = new Origin("design", "design-value");

    private static final Necessity NOT_NEEDED = new Necessity(false, "The case does not turn on it.");

    private final Signs signs;
    private final Conventions conventions;
    private final Meant meant;
    private final Unopened unopened;
    private final List<HarmRule> harms;
    private final String tablesHash;
    private final CaseWeigher weigher;
    private final KnownPeople people;

    public KeyCompiler(
            Signs signs,
            Conventions conventions,
            Conditions conditions,
            List<RelatedTerm> related,
            List<HarmRule> harms,
            String tablesHash,
            CaseWeigher weigher) {
        this.signs = signs;
        this.conventions = conventions;
        this.meant = new Meant(signs.meanings().terms(), related);
        this.unopened =
                new Unopened(signs.examination(), conditions, signs.meanings().terms(), conventions);
        this.harms = List.copyOf(harms);
        this.tablesHash = tablesHash;
        this.weigher = weigher;
        this.people = new KnownPeople(signs);
    }

    public CompiledKey compile(CaseTruth truth) {
        Rivals rivals = new Rivals(signs, conventions, truth);
        Weighed weighed = weigher.weigh(truth);
        Map<Unit, Necessity> chosen =
                new Essentials(rivals.names(), rivals.health(), weighed).choose(rivals.units(), truth.choices());
        LineMaker maker = new LineMaker(
                signs, conventions, meant, unopened, truth.body(), rivals.patient(), people.like(truth.body()));
        List<KeyLine> lines = new ArrayList<>();
        for (Unit unit : rivals.units()) {
            Manoeuvre manoeuvre =
                    signs.examination().manoeuvre(unit.manoeuvre()).orElseThrow();
            Necessity necessity = chosen.getOrDefault(unit, NOT_NEEDED);
            Showing showing = rivals.showing(manoeuvre, unit);
            Rivals.items(manoeuvre, unit.place())
                    .forEach(item -> lines.add(maker.line(manoeuvre, item, necessity, showing)));
        }
        return new CompiledKey(
                truth.id(),
                tablesHash,
                conventions.ids(),
                lines,
                conclusion(truth, lines, maker),
                harms,
                deferrals(),
                List.of(),
                judged(weighed.weighing(), chosen));
    }

    /** The weighing whose verdicts call essential what is marked as essential, and nothing else. */
    private static Weighing judged(Weighing weighing, Map<Unit, Necessity> chosen) {
        List<Verdict> verdicts = new ArrayList<>(weighing.verdicts());
        chosen.forEach((unit, necessity) -> {
            if (necessity.essential() && weighing.worth(unit.manoeuvre()) != Worth.ESSENTIAL) {
                verdicts.removeIf(verdict -> verdict.manoeuvre().equals(unit.manoeuvre()));
                verdicts.add(new Verdict(
                        unit.manoeuvre(), Worth.ESSENTIAL, weighing.bits(unit.manoeuvre()), necessity.reason()));
            }
        });
        return weighing.with(verdicts);
    }

    private List<DeferralRule> deferrals() {
        return signs.examination().deferrals().stream()
                .map(row -> new DeferralRule(row.id(), row.name(), row.question(), row.essential()))
                .toList();
    }

    private ConclusionKey conclusion(CaseTruth truth, List<KeyLine> lines, LineMaker maker) {
        List<Diagnosis> differential = Stream.concat(
                        truth.truths().stream(), truth.rivals().stream().map(CaseTruth.Rival::diagnosis))
                .toList();
        return new ConclusionKey(
                maker.sites().of(truth.body().ailments(), abnormal(lines, false, maker), abnormal(lines, true, maker)),
                truth.truths(),
                differential,
                truth.next(),
                BY_DESIGN);
    }

    /** The pathways of the abnormal items, or of those only that are essential. */
    private static List<Pathway> abnormal(List<KeyLine> lines, boolean essential, LineMaker maker) {
        return lines.stream()
                .filter(line -> line.necessity().essential() || !essential)
                .filter(line -> line.forms().stream().anyMatch(form -> !form.normal()))
                .flatMap(line -> maker.strands(line.item()).stream())
                .map(Strand::pathway)
                .toList();
    }
}
