package org.manubrium.web.review;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import org.manubrium.school.cohort.Cohorts;
import org.manubrium.web.shell.View;

/** The reviewer's first page. */
public final class ReviewPages {
    private final View view;
    private final Cohorts cohorts;

    public ReviewPages(View view, Cohorts cohorts) {
        this.view = view;
        this.cohorts = cohorts;
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
}
