package org.manubrium.web.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.standard.StandardDialect;

/** Whatever a template says, the page is the one that OGNL alone would have made. */
class PlainPathsTest {
    private final TemplateEngine plain = new TemplateEngine();
    private final TemplateEngine ours = new TemplateEngine();

    PlainPathsTest() {
        StandardDialect dialect = new StandardDialect();
        dialect.setVariableExpressionEvaluator(new PlainPaths(dialect.getVariableExpressionEvaluator()));
        ours.setDialect(dialect);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<p th:text=\"${name}\">x</p>",
                "<p th:text=\"${person.name}\">x</p>",
                "<p th:text=\"${person.address.town}\">x</p>",
                "<p th:text=\"${person.age + 1}\">x</p>",
                "<p th:text=\"${person.missing}\">x</p>",
                "<p th:text=\"${missing}\">x</p>",
                "<p th:text=\"${person.size}\">x</p>",
                "<p th:text=\"${person.isEmpty}\">x</p>",
                "<p th:text=\"${list.size()}\">x</p>",
                "<p th:text=\"${pair.left}\">x</p>",
                "<p th:text=\"${nothing}\">x</p>",
                "<p th:text=\"${true}\">x</p>",
                "<p th:if=\"${person.old}\">x</p>",
                "<p th:unless=\"${person.old}\">x</p>",
                "<p th:object=\"${person}\"><b th:text=\"*{name}\">x</b></p>",
                "<p th:each=\"one, at : ${list}\" th:text=\"|${at.index} ${one}|\">x</p>",
                "<p th:with=\"town=${person.address.town}\" th:text=\"${town}\">x</p>",
                "<p th:utext=\"${name}\">x</p>",
                "<p th:attr=\"title=${person.name}\" th:classappend=\"${person.old} ? 'old'\">x</p>",
            })
    void pageIsTheSame(String template) {
        assertThat(ours.process(template, model())).isEqualTo(plain.process(template, model()));
    }

    @Test
    void pathIsLookedUpAndEscaped() {
        assertThat(ours.process("<p th:text=\"${person.name}\">x</p>", model())).isEqualTo("<p>A &lt;b&gt;</p>");
    }

    private static Context model() {
        Map<String, Object> model = new HashMap<>();
        model.put("name", "A <b> & \"c\"");
        model.put("person", Map.of("name", "A <b>", "age", 47, "old", true, "address", Map.of("town", "Mereham")));
        model.put("list", List.of("a", "b"));
        model.put("pair", new Pair("l", "r"));
        model.put("nothing", null);
        return new Context(Locale.UK, model);
    }

    /** Not a map: OGNL's. */
    public record Pair(String left, String right) {}
}
