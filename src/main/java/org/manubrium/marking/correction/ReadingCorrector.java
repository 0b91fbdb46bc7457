package org.manubrium.marking.correction;

import java.util.List;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.ReadingKey;
import org.manubrium.marking.key.ReadingKey.ScaleKey;

/** Corrects what an item truly reads: a level on the scales of the conventions it holds under, a number, or a word. */
final class ReadingCorrector {
    private final KeyLine line;
    private final Correction correction;
    private final String to;

    ReadingCorrector(KeyLine line, Correction correction) {
        this.line = line;
        this.correction = correction;
        this.to = correction.to().strip();
    }

    ReadingKey reading() {
        if (line.reading() instanceof ReadingKey.Graded graded) {
            return graded(graded);
        }
        if (line.reading() instanceof ReadingKey.Measured measured) {
            return new ReadingKey.Measured(number(measured), measured.unit(), measured.tolerance());
        }
        ReadingKey.Chosen chosen = (ReadingKey.Chosen) line.reading();
        if (!chosen.codes().contains(to)) {
            throw new BadCorrection("Write one of: " + String.join(", ", chosen.codes()) + ".");
        }
        return new ReadingKey.Chosen(to, chosen.codes(), chosen.normal());
    }

    private double number(ReadingKey.Measured measured) {
        try {
            double number = Double.parseDouble(to);
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw new BadCorrection("Write a number, in " + measured.unit() + ".");
    }

    private ReadingKey graded(ReadingKey.Graded graded) {
        List<String> scales = line.forms().stream()
                .filter(form -> correction.holdsUnder(form.convention()))
                .map(form -> form.scale())
                .toList();
        return new ReadingKey.Graded(graded.scales().stream()
                .map(scale -> scales.contains(scale.scale()) ? on(scale) : scale)
                .toList());
    }

    private ScaleKey on(ScaleKey scale) {
        if (!scale.codes().contains(to)) {
            throw new BadCorrection(
                    "Write a level of the scale " + scale.name() + ": " + String.join(", ", scale.codes()) + ".");
        }
        return new ScaleKey(scale.scale(), scale.name(), scale.ordered(), scale.codes(), scale.normal(), to);
    }
}
