package org.manubrium.web.student;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import org.manubrium.examination.Caution;
import org.manubrium.examination.Examination;
import org.manubrium.examination.PartnerExercise;
import org.manubrium.web.shell.View;

/** The exercise on a partner for a sign that is felt, on one sheet to print. */
public final class PartnerPages {
    private final View view;
    private final Examination examination;

    public PartnerPages(View view, Examination examination) {
        this.view = view;
        this.examination = examination;
    }

    public void show(Context ctx) {
        PartnerExercise exercise = examination
                .partnerExercise(ctx.pathParam("sign"))
                .orElseThrow(() -> new NotFoundResponse("There is no exercise for this sign."));
        view.show(
                ctx,
                "student/partner",
                Map.of(
                        "exercise", model(exercise),
                        "cautions", cautions(exercise),
                        "unverified", !exercise.confidence().startsWith("seen")));
    }

    private static Map<String, Object> model(PartnerExercise exercise) {
        return Map.of(
                "name", exercise.name(),
                "partner", exercise.partner(),
                "steps", exercise.steps(),
                "feel", exercise.feel(),
                "wrong", exercise.wrong(),
                "note", exercise.note(),
                "confidence", exercise.confidence());
    }

    private List<String> cautions(PartnerExercise exercise) {
        return exercise.cautions().stream()
                .map(id -> examination.caution(id).map(Caution::text).orElse(id))
                .toList();
    }
}
