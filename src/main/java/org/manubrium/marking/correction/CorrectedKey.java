package org.manubrium.marking.correction;

import java.util.List;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.KeyLine;

/** Makes another key, in which one line of the mark sheet says something else. */
public final class CorrectedKey {
    private CorrectedKey() {}

    /** @throws BadCorrection for a line that the key does not hold, or a text that does not fit it */
    public static CompiledKey of(CompiledKey key, Correction correction) {
        if (correction.kind().equals("conclusion")) {
            return with(key, key.lines(), new ConclusionCorrector(key.conclusion()).with(correction));
        }
        LineCorrector corrector = new LineCorrector(correction);
        if (key.essentials().stream().noneMatch(corrector::concerns)) {
            throw new BadCorrection("The key holds no line \"" + correction.line() + "\".");
        }
        List<KeyLine> lines = key.lines().stream()
                .map(line -> corrector.concerns(line) && line.necessity().essential() ? corrector.of(line) : line)
                .toList();
        return with(key, lines, key.conclusion());
    }

    private static CompiledKey with(
            CompiledKey key, List<KeyLine> lines, org.manubrium.marking.key.ConclusionKey conclusion) {
        return new CompiledKey(
                key.caseId(),
                key.tablesHash(),
                key.conventions(),
                lines,
                conclusion,
                key.harms(),
                key.deferrals(),
                key.sore(),
                key.weighing());
    }
}
