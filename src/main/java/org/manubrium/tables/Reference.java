package org.manubrium.tables;

import java.util.List;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.examination.Examination;
import org.manubrium.patient.Conditions;
import org.manubrium.patient.Physiology;
import org.manubrium.patient.sign.Signs;

/** Everything the model knows, built once from the tables; {@code hash} names this state of them. */
public record Reference(
        Anatomy anatomy,
        Examination examination,
        Physiology physiology,
        Conditions conditions,
        Signs signs,
        MarkingTables marking,
        ReasoningTables reasoning,
        List<NextStep> nextSteps,
        List<Source> sources,
        String hash) {}
