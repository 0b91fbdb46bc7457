package org.manubrium.marking.key;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.manubrium.examination.Item;
import org.manubrium.reasoning.Weighing;

/**
 * The frozen key of one case version: all findings, all conventions' forms, all sources.
 *
 * @param tablesHash names the state of the tables it was compiled from
 * @param conventions ids of the teaching conventions it holds the forms of
 * @param lines one for every item of the examination, in table order
 * @param deferrals the reasons for which an intimate manoeuvre may be put off
 * @param sore where the patient is sore, one for each way of examining
 * @param weighing what is needed to say how an examination narrows the differential
 */
public record CompiledKey(
        String caseId,
        String tablesHash,
        List<String> conventions,
        List<KeyLine> lines,
        ConclusionKey conclusion,
        List<HarmRule> harms,
        List<DeferralRule> deferrals,
        List<Soreness> sore,
        Weighing weighing) {
    public CompiledKey {
        conventions = List.copyOf(conventions);
        lines = List.copyOf(lines);
        harms = List.copyOf(harms);
        deferrals = List.copyOf(deferrals);
        sore = List.copyOf(sore);
    }

    /** The same with other rules about harm. */
    public CompiledKey withHarms(List<HarmRule> others) {
        return new CompiledKey(caseId, tablesHash, conventions, lines, conclusion, others, deferrals, sore, weighing);
    }

    /** The same of a patient who is sore elsewhere. */
    public CompiledKey withSore(List<Soreness> others) {
        return new CompiledKey(caseId, tablesHash, conventions, lines, conclusion, harms, deferrals, others, weighing);
    }

    /** The same with other lines. */
    public CompiledKey with(List<KeyLine> others) {
        return new CompiledKey(caseId, tablesHash, conventions, others, conclusion, harms, deferrals, sore, weighing);
    }

    /** The same with another conclusion. */
    public CompiledKey with(ConclusionKey other) {
        return new CompiledKey(caseId, tablesHash, conventions, lines, other, harms, deferrals, sore, weighing);
    }

    /** Whether anything in it stands on one of these rows. */
    public boolean standsOn(Collection<String> rows) {
        return lines.stream()
                .flatMap(KeyLine::everythingBehind)
                .anyMatch(origin -> !origin.row().isEmpty() && rows.contains(origin.row()));
    }

    public Optional<KeyLine> line(Item item) {
        return lines.stream().filter(line -> line.item().equals(item)).findFirst();
    }

    /** The lines on which the case turns, in table order. */
    public List<KeyLine> essentials() {
        return lines.stream().filter(line -> line.necessity().essential()).toList();
    }
}
