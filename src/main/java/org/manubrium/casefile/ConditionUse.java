package org.manubrium.casefile;

import java.util.Optional;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Conditions;

/**
 * A condition as it is said of one patient.
 *
 * @param is the condition's id
 * @param severity 0 to 1
 * @param onset if it differs from the usual one
 */
public record ConditionUse(String is, Side side, Optional<String> level, double severity, Optional<Onset> onset) {

    /** What it does to the body. */
    public Ailment ailment(Conditions conditions) {
        return conditions.ailment(condition(conditions), side, level, severity, onset);
    }

    /** How it is said: "nerve root compression, C7, left". */
    public String said(Conditions conditions) {
        return Conditions.said(condition(conditions), side, level);
    }

    public boolean old(Conditions conditions) {
        return condition(conditions).old();
    }

    /** Whether both name the same disease in the same place, however severe. */
    public boolean sameAs(ConditionUse other) {
        return is.equals(other.is) && side == other.side && level.equals(other.level);
    }

    /** The same, fully developed. */
    public ConditionUse atFull() {
        return new ConditionUse(is, side, level, 1, onset);
    }

    /** Its row. */
    public Condition condition(Conditions conditions) {
        return conditions
                .condition(is)
                .orElseThrow(() -> new IllegalArgumentException("no condition is called \"" + is + "\""));
    }
}
