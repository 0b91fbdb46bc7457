package org.manubrium.web.educator;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.school.bedside.Choices;
import org.manubrium.school.signdesk.Chosen;
import org.manubrium.school.signdesk.Example;
import org.manubrium.school.signdesk.Look;
import org.manubrium.school.signdesk.SignDesk;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Wants;

/** The sign desk: every sign over its range, drawn in health and beside what a condition makes of it. */
public final class SignPages {
    private final View view;
    private final SignDesk desk;
    private final Choices choices;

    public SignPages(View view, SignDesk desk, Choices choices) {
        this.view = view;
        this.desk = desk;
        this.choices = choices;
    }

    public void list(Context ctx) {
        List<Map<String, Object>> systems = desk.bySystem().entrySet().stream()
                .map(entry -> Map.of(
                        "name",
                        capital(entry.getKey().replace('-', ' ')),
                        "signs",
                        entry.getValue().stream()
                                .map(m -> Map.of("id", m.id(), "name", capital(m.name())))
                                .toList()))
                .toList();
        view.show(ctx, "educator/signs", Map.of("systems", systems));
    }

    /** The page for a person; for the page's own script what is drawn on it. */
    public void show(Context ctx) {
        Manoeuvre manoeuvre = desk.manoeuvre(ctx.pathParam("manoeuvre"))
                .orElseThrow(() -> new NotFoundResponse("There is no such manoeuvre."));
        Chosen chosen = ChosenForm.read(ctx);
        Map<String, String> technique = ChosenForm.technique(ctx, manoeuvre);
        Chosen healthy = Chosen.health(chosen.age());
        if (Wants.page(ctx)) {
            List<Look> now = known(() -> desk.looks(manoeuvre, chosen, technique));
            view.show(
                    ctx, "educator/sign", page(ctx, manoeuvre, chosen, desk.looks(manoeuvre, healthy, technique), now));
        } else {
            List<Look> now = known(() -> desk.everywhere(manoeuvre, chosen, technique));
            ctx.json(SignJson.of(manoeuvre, choices, desk.everywhere(manoeuvre, healthy, technique), now));
        }
    }

    private static List<Look> known(Supplier<List<Look>> looks) {
        try {
            return looks.get();
        } catch (IllegalArgumentException unknown) {
            throw new BadRequestResponse(unknown.getMessage() + ".");
        }
    }

    private Map<String, Object> page(
            Context ctx, Manoeuvre manoeuvre, Chosen chosen, List<Look> health, List<Look> now) {
        Map<String, Object> model = new HashMap<>();
        model.put("id", manoeuvre.id());
        model.put("name", capital(manoeuvre.name()));
        model.put("technique", manoeuvre.technique());
        model.put("range", range(desk.range(manoeuvre), Form.query(ctx, "with")));
        model.put("ill", chosen.condition().isPresent());
        model.put("side", chosen.side().word());
        model.put("sides", List.of(Side.RIGHT.word(), Side.LEFT.word()));
        model.put("severity", Math.round(chosen.severity() * 100));
        model.put("age", chosen.age());
        model.put("onset", Form.query(ctx, "onset"));
        model.put("onsets", ChosenForm.ONSETS);
        model.put("variants", variants(ctx, manoeuvre));
        model.put("rows", rows(manoeuvre, health, now));
        return model;
    }

    /** The conditions by what is then read. */
    private static List<Map<String, Object>> range(List<Example> examples, String chosen) {
        Map<String, List<Map<String, Object>>> byReading = new LinkedHashMap<>();
        for (String reading :
                new TreeSet<>(examples.stream().map(Example::reading).toList())) {
            byReading.put(reading, new ArrayList<>());
        }
        for (Example example : examples) {
            String id = example.condition()
                    + example.level().map(level -> "|" + level).orElse("");
            String name =
                    example.name() + example.level().map(level -> ", " + level).orElse("");
            byReading
                    .getOrDefault(example.reading(), new ArrayList<>())
                    .add(Map.of("id", id, "name", name, "chosen", id.equals(chosen)));
        }
        return byReading.entrySet().stream()
                .map(entry -> Map.<String, Object>of("reading", entry.getKey(), "conditions", entry.getValue()))
                .toList();
    }

    private static List<Map<String, Object>> variants(Context ctx, Manoeuvre manoeuvre) {
        return manoeuvre.variants().stream()
                .map(variant -> {
                    String field = "how-" + variant.id();
                    return Map.<String, Object>of(
                            "field",
                            field,
                            "name",
                            capital(variant.name()),
                            "choices",
                            variant.choices().stream()
                                    .map(c -> Map.of(
                                            "id", c.id(),
                                            "name", c.name(),
                                            "chosen", c.id().equals(Form.query(ctx, field))))
                                    .toList());
                })
                .toList();
    }

    private static List<Map<String, Object>> rows(Manoeuvre manoeuvre, List<Look> health, List<Look> now) {
        Map<String, String> places = SignDesk.places(manoeuvre);
        List<Map<String, Object>> rows = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
            Item item = now.get(i).probe().item();
            String side = item.side() == Side.NONE ? "" : item.side().word();
            String where = (side + " " + places.getOrDefault(item.place(), "")).strip();
            rows.add(Map.of(
                    "where", where.isEmpty() ? "reading" : where,
                    "health", health.get(i).reading(),
                    "now", now.get(i).reading(),
                    "normal", now.get(i).normal()));
        }
        return rows;
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
