package org.manubrium.web.review;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.Map;
import org.manubrium.school.mark.Debrief;
import org.manubrium.school.mark.Debriefs;
import org.manubrium.school.review.CohortReview;
import org.manubrium.school.review.Reviews;
import org.manubrium.school.review.Sat;
import org.manubrium.web.shell.DebriefView;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.View;

/** The mark sheet of one attempt of a cohort, as its student has it. */
public final class AttemptPage {
    private final View view;
    private final Reviews reviews;
    private final Debriefs debriefs;
    private final DebriefView sheet;

    public AttemptPage(View view, Reviews reviews, Debriefs debriefs, DebriefView sheet) {
        this.view = view;
        this.reviews = reviews;
        this.debriefs = debriefs;
        this.sheet = sheet;
    }

    public void show(Context ctx) {
        CohortReview review = reviews.of(Form.id(ctx, "cohort")).orElseThrow(AttemptPage::none);
        Sat sat = review.attempt(Form.id(ctx, "attempt")).orElseThrow(AttemptPage::none);
        Debrief debrief = debriefs.any(sat.attempt().id()).orElseThrow(AttemptPage::none);
        Map<String, Object> model = new HashMap<>(sheet.model(debrief));
        model.put(
                "review",
                Map.of(
                        "student", sat.student().shownAs(),
                        "number", sat.attempt().number(),
                        "back",
                                "/reviewer/cohorts/" + review.cohort().id() + "/cases/"
                                        + sat.attempt().setCaseId().orElseThrow()));
        view.show(ctx, "student/debrief", model);
    }

    private static NotFoundResponse none() {
        return new NotFoundResponse("There is no mark sheet of such an attempt in this cohort.");
    }
}
