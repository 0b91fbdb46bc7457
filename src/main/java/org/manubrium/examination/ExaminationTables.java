package org.manubrium.examination;

import java.util.List;

/** The rows from which {@link Examination} is built. */
public record ExaminationTables(
        List<Position> positions,
        List<Move> moves,
        List<Scale> scales,
        List<Caution> cautions,
        List<Question> questions,
        List<Deferral> deferrals,
        List<Manoeuvre> manoeuvres,
        List<PartnerExercise> partnerExercises) {}
