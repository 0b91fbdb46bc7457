package org.manubrium.web.review;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.school.cohort.Cohorts;
import org.manubrium.school.review.CaseReview;
import org.manubrium.school.review.CohortReview;
import org.manubrium.school.review.Reviews;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.Moments;
import org.manubrium.web.shell.View;

/** The review of cohorts, for reviewers and educators. */
public final class ReviewPages {
    private final View view;
    private final Cohorts cohorts;
    private final Reviews reviews;
    private final Moments moments;

    public ReviewPages(View view, Cohorts cohorts, Reviews reviews, Moments moments) {
        this.view = view;
        this.cohorts = cohorts;
        this.reviews = reviews;
        this.moments = moments;
    }

    public void list(Context ctx) {
        List<Map<String, Object>> lines = cohorts.all().stream()
                .map(line -> Map.<String, Object>of(
                        "id", line.cohort().id(),
                        "name", line.cohort().name(),
                        "students", line.students(),
                        "work", line.setCases()))
                .toList();
        view.show(ctx, "review/list", Map.of("cohorts", lines));
    }

    public void cohort(Context ctx) {
        CohortReview review = review(ctx);
        Map<String, Object> model = new HashMap<>(named(review));
        model.put("convention", cohorts.conventionName(review.cohort().convention()));
        model.put("students", review.students().size());
        model.put("cases", review.cases().stream().map(one -> line(review, one)).toList());
        model.put("on", review.cohort().leaderboardOn());
        model.put("board", BoardModel.of(review.leaderboard(), -1));
        view.show(ctx, "review/cohort", model);
    }

    public void setCase(Context ctx) {
        CohortReview review = review(ctx);
        CaseReview one = review.ofSet(Form.id(ctx, "set"))
                .orElseThrow(() -> new NotFoundResponse("There is no such case set to this cohort."));
        Map<String, Object> model = new HashMap<>(named(review));
        model.put("case", line(review, one));
        model.put("map", MapModel.of(one));
        model.put("answers", AnswersModel.of(one));
        model.put("attempts", AttemptsModel.of(one, moments));
        view.show(ctx, "review/case", model);
    }

    CohortReview review(Context ctx) {
        return reviews.of(Form.id(ctx, "cohort")).orElseThrow(() -> new NotFoundResponse("There is no such cohort."));
    }

    private static Map<String, Object> named(CohortReview review) {
        return Map.of(
                "id", review.cohort().id(),
                "name", review.cohort().name(),
                "pseudonyms", review.cohort().pseudonyms());
    }

    private Map<String, Object> line(CohortReview review, CaseReview one) {
        List<Double> totals = one.firsts().stream()
                .map(sat -> sat.sheet().orElseThrow().total())
                .toList();
        Map<String, Object> line = new HashMap<>();
        line.put("id", one.set().id());
        line.put("title", one.title());
        line.put("version", one.version());
        line.put("closes", moments.read(one.set().closesAt()));
        line.put("closed", !review.now().isBefore(one.set().closesAt()));
        line.put("handedIn", totals.size());
        line.put("of", review.students().size());
        line.put(
                "mean",
                totals.isEmpty()
                        ? "–"
                        : Percent.oneDecimal(totals.stream()
                                .mapToDouble(Double::doubleValue)
                                .average()
                                .orElse(0)));
        return line;
    }
}
