package org.manubrium.web.review;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import org.manubrium.school.review.CohortReview;
import org.manubrium.school.review.Reviews;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** The leaderboard as the students of a cohort see it, where their educator has turned it on. */
public final class LeaderboardPage {
    private final View view;
    private final Reviews reviews;

    public LeaderboardPage(View view, Reviews reviews) {
        this.view = view;
        this.reviews = reviews;
    }

    public void show(Context ctx) {
        long reader = Visitor.of(ctx).account().id();
        CohortReview review = reviews.forStudent(Form.id(ctx, "cohort"), reader)
                .orElseThrow(() -> new NotFoundResponse("There is no leaderboard here."));
        view.show(
                ctx,
                "review/leaderboard",
                Map.of(
                        "name", review.cohort().name(),
                        "board", BoardModel.of(review.leaderboard(), reader)));
    }
}
