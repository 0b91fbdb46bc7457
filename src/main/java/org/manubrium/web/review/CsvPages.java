package org.manubrium.web.review;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import org.manubrium.exchange.Csv;
import org.manubrium.school.review.CohortCsv;
import org.manubrium.school.review.CohortReview;
import org.manubrium.school.review.Reviews;
import org.manubrium.web.shell.Form;

/** The review as CSV files. */
public final class CsvPages {
    private final Reviews reviews;

    public CsvPages(Reviews reviews) {
        this.reviews = reviews;
    }

    public void attempts(Context ctx) {
        send(ctx, "attempts", CohortCsv::attempts);
    }

    public void lines(Context ctx) {
        send(ctx, "lines", CohortCsv::lines);
    }

    public void answers(Context ctx) {
        send(ctx, "answers", CohortCsv::answers);
    }

    public void leaderboard(Context ctx) {
        send(ctx, "leaderboard", CohortCsv::leaderboard);
    }

    private void send(Context ctx, String what, Function<CohortReview, Csv> table) {
        CohortReview review =
                reviews.of(Form.id(ctx, "cohort")).orElseThrow(() -> new NotFoundResponse("There is no such cohort."));
        String name = "cohort-" + review.cohort().id() + "-" + what + ".csv";
        byte[] file = table.apply(review).text().getBytes(StandardCharsets.UTF_8);
        ctx.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        ctx.contentType("text/csv; charset=utf-8; header=present").result(file);
    }
}
