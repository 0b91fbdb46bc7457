package org.manubrium.marking;

import java.util.List;
import org.manubrium.examination.Reading;
import org.manubrium.marking.credit.NumberRule;
import org.manubrium.marking.credit.OrdinalRule;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Form;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.ReadingKey;

/** Whether a student called a sign normal or abnormal, in words or by the reading, and whether that was wrong. */
final class Judgement {
    static final String NORMAL = "normal";
    static final String ABNORMAL = "abnormal";

    private final String convention;
    private final Attempt attempt;

    Judgement(String convention, Attempt attempt) {
        this.convention = convention;
        this.attempt = attempt;
    }

    /** Whether a normal sign was called abnormal or the reverse. */
    boolean wrong(KeyLine line, CompiledKey key) {
        return attempt.reading(line).map(r -> wrong(line, r)).orElse(false) || wrongInWords(line, key);
    }

    private boolean wrongInWords(KeyLine line, CompiledKey key) {
        List<String> said = attempt.answer(line.item(), NORMAL);
        if (said.isEmpty() || (!attempt.answeredItself(line.item(), NORMAL) && !speaksForItsSide(line, key))) {
            return false;
        }
        return !said.equals(List.of(truth(line, key) ? NORMAL : ABNORMAL));
    }

    /** An answer about a whole side counts once, at the first of the items examined there. */
    private boolean speaksForItsSide(KeyLine line, CompiledKey key) {
        return key.lines().stream()
                .filter(other -> sameSide(line, other) && attempt.probed(other))
                .findFirst()
                .filter(first -> first.item().equals(line.item()))
                .isPresent();
    }

    private static boolean sameSide(KeyLine line, KeyLine other) {
        return line.item().manoeuvre().equals(other.item().manoeuvre())
                && line.item().side() == other.item().side();
    }

    /**
     * What should have been said: of the item itself or, if the answer is about its side of the manoeuvre as a whole, of
     * all that was examined there.
     */
    boolean truth(KeyLine line, CompiledKey key) {
        if (line.item().place().isEmpty() || attempt.answeredItself(line.item(), NORMAL)) {
            return line.form(convention).normal();
        }
        return key.lines().stream()
                .filter(other -> sameSide(line, other) && (other.item().equals(line.item()) || attempt.probed(other)))
                .allMatch(other -> other.form(convention).normal());
    }

    private boolean wrong(KeyLine line, Reading reading) {
        Form form = line.form(convention);
        if (line.reading() instanceof ReadingKey.Graded graded && reading instanceof Reading.Grade grade) {
            return graded.on(grade.scale())
                    .map(scale -> OrdinalRule.crosses(grade.grade(), scale))
                    .orElse(false);
        }
        if (line.reading() instanceof ReadingKey.Measured measured && reading instanceof Reading.Amount amount) {
            return amount.unit().equals(measured.unit())
                    && form.within(amount.value()) != form.within(measured.value())
                    && NumberRule.credit(amount.value(), measured.value(), measured.tolerance())
                                    .amount()
                            < 1;
        }
        return line.reading() instanceof ReadingKey.Chosen chosen
                && reading instanceof Reading.Seen seen
                && chosen.codes().contains(seen.seen())
                && chosen.normal().contains(seen.seen()) != chosen.normal().contains(chosen.code());
    }
}
