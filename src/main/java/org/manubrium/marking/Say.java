package org.manubrium.marking;

import java.util.List;
import org.manubrium.examination.Reading;
import org.manubrium.marking.key.Form;
import org.manubrium.marking.key.ReadingKey;

/** How readings and answers are written on a mark sheet. */
final class Say {
    private Say() {}

    static String reading(Reading reading) {
        if (reading instanceof Reading.Grade grade) {
            return grade.grade() + " on the scale " + grade.scale();
        }
        if (reading instanceof Reading.Amount amount) {
            return number(amount.value()) + " " + amount.unit();
        }
        return ((Reading.Seen) reading).seen();
    }

    /** The true reading, on the scale that was used. */
    static String key(ReadingKey key, Form form, String usedScale) {
        if (key instanceof ReadingKey.Graded graded) {
            return graded.on(usedScale)
                    .or(() -> graded.on(form.scale()))
                    .map(scale -> scale.right() + " on the scale " + scale.scale())
                    .orElse("");
        }
        if (key instanceof ReadingKey.Measured measured) {
            return number(measured.value()) + " " + measured.unit() + ", give or take " + number(measured.tolerance());
        }
        return ((ReadingKey.Chosen) key).code();
    }

    static String normal(boolean normal) {
        return normal ? "normal" : "abnormal";
    }

    static String list(List<String> words) {
        return String.join(", ", words);
    }

    /** A number without needless noughts, to two decimals. */
    static String number(double number) {
        double rounded = Math.round(number * 100) / 100.0;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }
}
