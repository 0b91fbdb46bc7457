package org.manubrium.patient.sign;

import java.util.Optional;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Variation;

/** Patients with one condition of the chest. */
final class ChestPatients {
    private ChestPatients() {}

    /** An average patient of 55 with a condition as usual: "emphysema", "lobar-pneumonia left upper lobe". */
    static Bedside with(String said) {
        return with(said, Bedside.person(55, Variation.AVERAGE), 1);
    }

    static Bedside with(String said, Bedside person, double severity) {
        String[] words = said.split(" ", 3);
        Condition condition = Bedside.REFERENCE.conditions().condition(words[0]).orElseThrow();
        Side side = words.length > 1 ? Side.of(words[1]).orElseThrow() : Side.NONE;
        Optional<String> level = words.length > 2
                ? Optional.of(words[2])
                : condition.levels().stream().findFirst();
        return person.ailing(
                Bedside.REFERENCE.conditions().ailment(condition, side, level, severity, Optional.empty()));
    }
}
