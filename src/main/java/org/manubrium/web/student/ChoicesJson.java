package org.manubrium.web.student;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.manubrium.examination.Caution;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Scale;
import org.manubrium.school.bedside.Choices;
import org.manubrium.school.bedside.Term;

/** What can be done and answered, as the browser reads it. The same for every patient of a cohort. */
public final class ChoicesJson {
    private ChoicesJson() {}

    /** Everything that can be chosen; the manoeuvres that are begun in full, the others only as they are picked from a list. */
    static Map<String, Object> of(Choices choices, Set<String> begun) {
        Examination examination = choices.examination();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put(
                "positions",
                examination.positions().stream()
                        .map(p -> Map.of("id", p.id(), "name", p.name()))
                        .toList());
        json.put(
                "manoeuvres",
                examination.manoeuvres().stream()
                        .map(m -> begun.contains(m.id()) ? manoeuvre(m, choices) : brief(m))
                        .toList());
        json.put(
                "questions",
                examination.questions().stream()
                        .map(q -> Map.of("id", q.id(), "name", q.name()))
                        .toList());
        json.put(
                "deferrals",
                examination.deferrals().stream()
                        .map(d -> Map.of("id", d.id(), "name", d.name()))
                        .toList());
        json.put("terms", terms(choices.terms()));
        return json;
    }

    /** Each term as {id, name}; as its id alone where it is called as in "means", or else as its id: there are thousands. */
    private static Map<String, List<Object>> terms(Map<String, List<Term>> all) {
        Map<String, String> meant = all.getOrDefault("means", List.of()).stream()
                .collect(Collectors.toMap(Term::id, Term::name, (a, b) -> a));
        Map<String, List<Object>> json = new LinkedHashMap<>();
        all.forEach((name, terms) -> json.put(
                name,
                terms.stream()
                        .<Object>map(term -> {
                            String usual = name.equals("means") ? term.id() : meant.getOrDefault(term.id(), term.id());
                            return usual.equals(term.name()) ? term.id() : term;
                        })
                        .toList()));
        return json;
    }

    /** One manoeuvre as the drawings and the technique of the bedside read it. */
    public static Map<String, Object> manoeuvre(Manoeuvre manoeuvre, Choices choices) {
        Map<String, Object> json = brief(manoeuvre);
        json.put("places", manoeuvre.places());
        json.put("technique", manoeuvre.technique());
        json.put("goesWrong", manoeuvre.goesWrong());
        json.put("cautions", cautions(manoeuvre, choices.examination()));
        json.put(
                "variants",
                manoeuvre.variants().stream().map(ChoicesJson::variant).toList());
        json.put("reading", reading(manoeuvre, choices));
        json.put("questions", manoeuvre.questions());
        json.put("deferrable", manoeuvre.intimate());
        return json;
    }

    /** As much of a manoeuvre as it takes to find it and to know whether it can be done now. */
    private static Map<String, Object> brief(Manoeuvre manoeuvre) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", manoeuvre.id());
        json.put("name", manoeuvre.name());
        json.put("system", manoeuvre.system());
        json.put("positions", manoeuvre.positions());
        json.put("sides", manoeuvre.sided() ? List.of("right", "left") : List.of("none"));
        json.put("placeMode", word(manoeuvre.placeMode()));
        json.put("seconds", manoeuvre.seconds());
        return json;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static List<String> cautions(Manoeuvre manoeuvre, Examination examination) {
        return manoeuvre.cautions().stream()
                .map(id -> examination.caution(id).map(Caution::text).orElse(id))
                .toList();
    }

    private static Map<String, Object> variant(org.manubrium.examination.Variant variant) {
        return Map.of(
                "id",
                variant.id(),
                "name",
                variant.name(),
                "choices",
                variant.choices().stream()
                        .map(c -> Map.of("id", c.id(), "name", c.name(), "how", c.note()))
                        .toList());
    }

    private static Map<String, Object> reading(Manoeuvre manoeuvre, Choices choices) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", word(manoeuvre.kind()));
        json.put("unit", manoeuvre.unit());
        Scale scale = choices.scales().get(manoeuvre.id());
        if (scale != null) {
            json.put("scale", Map.of("id", scale.id(), "name", scale.name(), "levels", levels(scale)));
        }
        return json;
    }

    private static List<Map<String, String>> levels(Scale scale) {
        List<Map<String, String>> levels = new ArrayList<>();
        scale.levels().forEach(l -> levels.add(Map.of("code", l.code(), "label", Objects.requireNonNull(l.label()))));
        return levels;
    }
}
