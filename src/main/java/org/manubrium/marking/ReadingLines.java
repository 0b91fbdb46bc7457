package org.manubrium.marking;

import java.util.List;
import java.util.Optional;
import org.manubrium.examination.Reading;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.credit.ChoiceRule;
import org.manubrium.marking.credit.Credit;
import org.manubrium.marking.credit.NumberRule;
import org.manubrium.marking.credit.OrdinalRule;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Form;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.ReadingKey;
import org.manubrium.marking.key.ReadingKey.ScaleKey;

/**
 * Whether what was there was seen: every essential item, and every other item that was called abnormal when it was normal
 * or the reverse. A right judgement elsewhere adds nothing, so that it can never lower a mark.
 */
final class ReadingLines {
    private final String convention;
    private final Attempt attempt;
    private final Judgement judgement;
    private final Checked checked;

    ReadingLines(String convention, Attempt attempt, Checked checked) {
        this.convention = convention;
        this.attempt = attempt;
        this.checked = checked;
        this.judgement = new Judgement(convention, attempt);
    }

    List<Line> of(CompiledKey key) {
        return key.lines().stream()
                .filter(line -> line.necessity().essential() || judgement.wrong(line, key))
                .map(this::line)
                .toList();
    }

    private Line line(KeyLine line) {
        Form form = line.form(convention);
        Optional<Reading> reading = attempt.reading(line);
        Credit credit = line.necessity().essential() ? essential(line, reading) : misjudged(form);
        return new Line(
                "reading/" + line.item(),
                DomainName.READING,
                "Read: " + line.label(),
                reading.map(Say::reading).orElse(""),
                Say.key(line.reading(), form, used(reading)) + " (" + Say.normal(form.normal()) + ")",
                credit.amount(),
                credit.why(),
                line.origin(),
                checked.standing(line.behind()));
    }

    private static Credit misjudged(Form form) {
        return Credit.none(
                form.normal()
                        ? "A normal sign was called abnormal; that costs wherever it is recorded."
                        : "An abnormal sign was called normal; that costs wherever it is recorded.");
    }

    private Credit essential(KeyLine line, Optional<Reading> reading) {
        if (reading.isEmpty()) {
            return Credit.none("No reading was written down.");
        }
        if (!attempt.readAfterProbe(line)) {
            return Credit.none("It was written down without having been examined first.");
        }
        return credit(line, reading.get());
    }

    private Credit credit(KeyLine line, Reading reading) {
        if (line.reading() instanceof ReadingKey.Graded graded && reading instanceof Reading.Grade grade) {
            return graded.on(grade.scale())
                    .map(scale -> graded(line, scale, grade.grade()))
                    .orElseGet(() -> Credit.none("The scale " + grade.scale() + " does not grade this sign."));
        }
        if (line.reading() instanceof ReadingKey.Measured measured && reading instanceof Reading.Amount amount) {
            return amount.unit().equals(measured.unit())
                    ? NumberRule.credit(amount.value(), measured.value(), measured.tolerance())
                    : Credit.none("It is measured in " + measured.unit() + ", not in " + amount.unit() + ".");
        }
        if (line.reading() instanceof ReadingKey.Chosen chosen && reading instanceof Reading.Seen seen) {
            return ChoiceRule.credit(seen.seen(), chosen.code());
        }
        return Credit.none("This sign is not read in that way.");
    }

    private Credit graded(KeyLine line, ScaleKey scale, String grade) {
        boolean lowest = scale.ordered() && scale.codes().indexOf(grade) == 0;
        if (lowest && !line.showing().lowestMayBeRecorded(attempt.techniquesBeforeReading(line))) {
            return Credit.none("The lowest level may be recorded only after reinforcement has been tried.");
        }
        return OrdinalRule.credit(grade, scale);
    }

    private static String used(Optional<Reading> reading) {
        return reading.filter(Reading.Grade.class::isInstance)
                .map(r -> ((Reading.Grade) r).scale())
                .orElse("");
    }
}
