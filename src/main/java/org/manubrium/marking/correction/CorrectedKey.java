package org.manubrium.marking.correction;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.reasoning.Verdict;
import org.manubrium.reasoning.Weighing;
import org.manubrium.reasoning.Worth;

/** Makes another key, in which one line of the mark sheet says something else. */
public final class CorrectedKey {
    private CorrectedKey() {}

    /** @throws BadCorrection for a line that the key does not hold, or a text that does not fit it */
    public static CompiledKey of(CompiledKey key, Correction correction) {
        if (correction.kind().equals("conclusion")) {
            return key.with(new ConclusionCorrector(key.conclusion()).with(correction));
        }
        LineCorrector corrector = new LineCorrector(correction);
        if (key.essentials().stream().noneMatch(corrector::concerns)) {
            throw new BadCorrection("The key holds no line \"" + correction.line() + "\".");
        }
        List<KeyLine> lines = key.lines().stream()
                .map(line -> corrector.concerns(line) && line.necessity().essential() ? corrector.of(line) : line)
                .toList();
        return new CompiledKey(
                key.caseId(),
                key.tablesHash(),
                key.conventions(),
                lines,
                key.conclusion(),
                key.harms(),
                key.deferrals(),
                key.sore(),
                correction.kind().equals("essential") ? judged(key.weighing(), lines) : key.weighing());
    }

    /** The weighing whose verdicts no longer call essential what has been taken out. */
    private static Weighing judged(Weighing weighing, List<KeyLine> lines) {
        Set<String> marked = lines.stream()
                .filter(line -> line.necessity().essential())
                .map(line -> line.item().manoeuvre())
                .collect(Collectors.toSet());
        return weighing.with(weighing.verdicts().stream()
                .map(verdict -> verdict.worth() != Worth.ESSENTIAL || marked.contains(verdict.manoeuvre())
                        ? verdict
                        : new Verdict(
                                verdict.manoeuvre(),
                                Worth.USEFUL,
                                verdict.bits(),
                                "An educator decided that the case does not turn on it."))
                .toList());
    }
}
