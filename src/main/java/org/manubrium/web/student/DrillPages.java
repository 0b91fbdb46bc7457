package org.manubrium.web.student;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.manubrium.exchange.BadRecord;
import org.manubrium.school.drill.DrillDesk;
import org.manubrium.school.drill.Today;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;
import org.manubrium.web.shell.Wants;

/** Today's five signs: the page, its questions, and the answers that it sends. */
public final class DrillPages {
    private final View view;
    private final DrillDesk desk;
    private final Map<String, String> citations;

    /** @param citations the citation of each source, by id */
    public DrillPages(View view, DrillDesk desk, Map<String, String> citations) {
        this.view = view;
        this.desk = desk;
        this.citations = Map.copyOf(citations);
    }

    /** The page for a person, the day's questions as JSON for the page's own script. */
    public void show(Context ctx) {
        if (Wants.page(ctx)) {
            view.show(ctx, "student/drill", Map.of());
            return;
        }
        Today today = desk.today(account(ctx));
        ctx.json(Map.of(
                "day", today.day(),
                "questions", today.questions().stream().map(this::question).toList(),
                "manoeuvres", DrillJson.manoeuvres(today)));
    }

    /** Takes an answer: {@code option} in the body, its place among the options. */
    public void answer(Context ctx) {
        int number = ctx.pathParamAsClass("number", Integer.class)
                .getOrThrow(errors -> new NotFoundResponse("There is no such question."));
        ctx.json(answered(desk.answer(account(ctx), number, option(ctx))));
    }

    private static int option(Context ctx) {
        Map<?, ?> sent = ctx.bodyAsClass(Map.class);
        if (sent.get("option") instanceof Integer option) {
            return option;
        }
        throw new BadRecord("option", "the place of an option", String.valueOf(sent.get("option")));
    }

    private Map<String, Object> question(Today.Asked asked) {
        Map<String, Object> json = new HashMap<>();
        json.put("number", asked.number());
        json.put("question", DrillJson.tree(asked.question()));
        asked.answer().ifPresent(answer -> json.put("answer", answered(answer)));
        return json;
    }

    private Map<String, Object> answered(Today.Answered answer) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("chosen", answer.chosen());
        json.put("right", answer.right());
        json.put("why", answer.why());
        json.put("sources", cited(answer.source()));
        json.put("unverified", answer.confidence().equals("from-memory"));
        return json;
    }

    private List<String> cited(String ids) {
        return Arrays.stream(ids.split(";", -1))
                .map(String::trim)
                .filter(id -> !id.isEmpty())
                .map(id -> citations.getOrDefault(id, id))
                .distinct()
                .collect(Collectors.toList());
    }

    private static long account(Context ctx) {
        return Visitor.of(ctx).account().id();
    }
}
