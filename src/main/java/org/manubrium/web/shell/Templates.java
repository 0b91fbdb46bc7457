package org.manubrium.web.shell;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.standard.StandardDialect;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** Templates from {@code templates/} on the class path, read once. */
final class Templates {
    private final TemplateEngine engine = new TemplateEngine();

    Templates() {
        ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver(Templates.class.getClassLoader());
        resolver.setPrefix("templates/");
        resolver.setSuffix(".html");
        resolver.setTemplateMode(TemplateMode.HTML);
        resolver.setCharacterEncoding(StandardCharsets.UTF_8.name());
        resolver.setCacheable(true);
        engine.setTemplateResolver(resolver);
        StandardDialect dialect = new StandardDialect();
        dialect.setVariableExpressionEvaluator(new PlainPaths(dialect.getVariableExpressionEvaluator()));
        engine.setDialect(dialect);
    }

    String draw(String template, Map<String, Object> model) {
        return engine.process(template, new Context(Locale.UK, model));
    }
}
