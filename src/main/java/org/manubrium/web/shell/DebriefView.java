package org.manubrium.web.shell;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import org.manubrium.school.mark.Debrief;
import org.manubrium.store.MarkChange;

/** A debrief as the page's model: numbers written as they are read, sources as citations. */
public final class DebriefView {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final double FULL = 0.995;

    /** So many lines go on one sheet of A4 beside what else stands there. */
    private static final int ON_PAPER = 15;

    private static final Moments MOMENTS = new Moments(ZoneId.systemDefault());

    private final Map<String, String> citations;

    private final LongFunction<Map<String, Object>> profile;

    /**
     * @param citations the citation of each source, by id
     * @param profile the model of how an attempt went, by its number
     */
    public DebriefView(Map<String, String> citations, LongFunction<Map<String, Object>> profile) {
        this.citations = Map.copyOf(citations);
        this.profile = profile;
    }

    public Map<String, Object> model(Debrief debrief) {
        JsonNode sheet = read(debrief.sheet());
        Map<String, Object> model = new HashMap<>();
        model.put("attempt", debrief.attempt());
        model.put("title", debrief.patient().title());
        model.put(
                "patient",
                Map.of(
                        "name", debrief.patient().name(),
                        "age", debrief.patient().age(),
                        "sex", debrief.patient().sex()));
        model.put("total", Math.round(sheet.path("total").asDouble()));
        model.put("convention", debrief.convention());
        Set<String> paper = paper(sheet);
        model.put("domains", domains(sheet, paper));
        model.put("offPaper", sheet.path("lines").size() - full(sheet) - paper.size());
        model.put("handling", each(sheet.path("handling"), DebriefView::handled));
        model.put("besides", each(sheet.path("besides"), DebriefView::beside));
        model.put("harms", each(sheet.path("harms"), this::harm));
        model.put("notes", each(sheet.path("notes"), JsonNode::asText));
        model.put("changes", changes(debrief.changes()));
        model.put("lessons", LessonsView.model(debrief.lessons()));
        model.put("full", full(sheet));
        model.put(
                "timeline",
                debrief.timeline().stream()
                        .map(step -> Map.of("clock", clock(step.bedsideSeconds()), "text", step.text()))
                        .toList());
        model.put("profile", profile.apply(debrief.attempt()));
        return Map.of("sheet", model);
    }

    /** The ids of the lines that go on paper: those that earned least, of equals the first. */
    private static Set<String> paper(JsonNode sheet) {
        List<JsonNode> lost = new ArrayList<>();
        sheet.path("lines").forEach(line -> {
            if (!scored(line) || line.path("credit").asDouble() < FULL) {
                lost.add(line);
            }
        });
        lost.sort(Comparator.comparing((JsonNode line) -> !scored(line))
                .thenComparingDouble(line -> line.path("credit").asDouble())
                .thenComparing(line -> line.path("domain").asText().equals("essential")));
        return lost.stream()
                .limit(ON_PAPER)
                .map(line -> line.path("id").asText())
                .collect(Collectors.toSet());
    }

    /** How many lines earned everything: on paper they are counted, not printed. */
    private static long full(JsonNode sheet) {
        long full = 0;
        for (JsonNode line : sheet.path("lines")) {
            full += scored(line) && line.path("credit").asDouble() >= FULL ? 1 : 0;
        }
        return full;
    }

    /** From each mark to the next. */
    private static List<Map<String, Object>> changes(List<MarkChange> marks) {
        List<Map<String, Object>> changes = new ArrayList<>();
        for (int i = 1; i < marks.size(); i++) {
            MarkChange now = marks.get(i);
            Map<String, Object> change = new HashMap<>();
            change.put("when", MOMENTS.read(now.madeAt()));
            change.put("was", Math.round(marks.get(i - 1).total()));
            change.put("is", Math.round(now.total()));
            change.put("why", now.reason());
            now.who().ifPresent(who -> change.put("who", who));
            changes.add(change);
        }
        return changes;
    }

    private static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a stored mark sheet is not JSON", e);
        }
    }

    private List<Map<String, Object>> domains(JsonNode sheet, Set<String> paper) {
        List<Map<String, Object>> domains = new ArrayList<>();
        sheet.path("domains")
                .properties()
                .forEach(domain -> domains.add(Map.of(
                        "name",
                        domain.getKey(),
                        "percent",
                        Math.round(domain.getValue().asDouble()),
                        "lines",
                        lines(sheet, domain.getKey(), paper))));
        return domains;
    }

    private List<Map<String, Object>> lines(JsonNode sheet, String domain, Set<String> paper) {
        List<Map<String, Object>> lines = new ArrayList<>();
        for (JsonNode line : sheet.path("lines")) {
            if (line.path("domain").asText().equals(domain)) {
                Map<String, Object> model = line(line);
                model.put("offPaper", !paper.contains(line.path("id").asText()));
                lines.add(model);
            }
        }
        return lines;
    }

    private Map<String, Object> line(JsonNode line) {
        double credit = line.path("credit").asDouble();
        Map<String, Object> model = new HashMap<>();
        for (String field : List.of("asked", "done", "key", "why", "confidence")) {
            model.put(field, line.path(field).asText());
        }
        model.put("credit", Math.round(credit * 100));
        model.put("creditText", scored(line) ? credit >= FULL ? "full" : credit > 0.005 ? "part" : "none" : "off");
        model.put("unscored", !scored(line));
        model.put("source", cite(line.path("source").asText()));
        model.put("unverified", line.path("unverified").asBoolean());
        return model;
    }

    /** What stands on facts that nobody has checked does not score in a station. */
    private static boolean scored(JsonNode line) {
        return line.path("scored").asBoolean(true);
    }

    private static Map<String, Object> handled(JsonNode one) {
        return Map.of(
                "text", one.path("text").asText(),
                "well", one.path("well").asBoolean(),
                "why", one.path("why").asText());
    }

    private static Map<String, Object> beside(JsonNode one) {
        return Map.of(
                "name", one.path("name").asText(),
                "percent", Math.round(one.path("percent").asDouble()));
    }

    private Map<String, Object> harm(JsonNode harm) {
        return Map.of(
                "text",
                harm.path("text").asText(),
                "source",
                cite(harm.path("source").asText()));
    }

    /** "a;b" as the citations of a and b. */
    private String cite(String ids) {
        return Arrays.stream(ids.split(";", -1))
                .map(String::trim)
                .map(id -> citations.getOrDefault(id, id))
                .collect(Collectors.joining("; "));
    }

    private static <T> List<T> each(JsonNode list, java.util.function.Function<JsonNode, T> as) {
        List<T> found = new ArrayList<>();
        list.forEach(node -> found.add(as.apply(node)));
        return found;
    }

    private static String clock(int seconds) {
        return "%d:%02d".formatted(seconds / 60, seconds % 60);
    }
}
