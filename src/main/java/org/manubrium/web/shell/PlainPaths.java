package org.manubrium.web.shell;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.thymeleaf.context.IExpressionContext;
import org.thymeleaf.standard.expression.IStandardVariableExpression;
import org.thymeleaf.standard.expression.IStandardVariableExpressionEvaluator;
import org.thymeleaf.standard.expression.StandardExpressionExecutionContext;
import org.thymeleaf.standard.expression.StandardExpressions;

/**
 * Evaluates {@code ${a.b.c}} over maps by looking it up, a fraction of what OGNL takes, and leaves everything else to
 * OGNL: other expressions, other objects than maps, and every place where Thymeleaf restricts what may be reached.
 */
final class PlainPaths implements IStandardVariableExpressionEvaluator {
    private static final Pattern PATH = Pattern.compile("[A-Za-z_]\\w*(\\.[A-Za-z_]\\w*)*");

    /** What OGNL reads on a map as the map's own, not as a key. */
    private static final Set<String> OF_THE_MAP = Set.of("size", "keys", "keySet", "values", "isEmpty", "class");

    private static final List<String> NOT_PLAIN = List.of();

    private final IStandardVariableExpressionEvaluator ognl;
    // Expressions come from templates only, so there are as many as are written there.
    private final Map<String, List<String>> paths = new ConcurrentHashMap<>();

    PlainPaths(IStandardVariableExpressionEvaluator ognl) {
        this.ognl = ognl;
    }

    @Override
    public @Nullable Object evaluate(
            IExpressionContext context,
            IStandardVariableExpression expression,
            StandardExpressionExecutionContext execution) {
        if (expression.getUseSelectionAsRoot() || execution.getRestrictVariableAccess()) {
            return ognl.evaluate(context, expression, execution);
        }
        List<String> path = paths.computeIfAbsent(expression.getExpression(), PlainPaths::parse);
        if (path.isEmpty() || !context.containsVariable(path.get(0))) {
            return ognl.evaluate(context, expression, execution);
        }
        @Nullable Object found = context.getVariable(path.get(0));
        for (String name : path.subList(1, path.size())) {
            if (!(found instanceof Map<?, ?> map)) {
                return ognl.evaluate(context, expression, execution);
            }
            found = map.get(name);
        }
        return execution.getPerformTypeConversion() ? text(context, found) : found;
    }

    private static List<String> parse(String expression) {
        if (!PATH.matcher(expression).matches()) {
            return NOT_PLAIN;
        }
        List<String> names = List.of(expression.split("\\."));
        return names.stream().anyMatch(OF_THE_MAP::contains) ? NOT_PLAIN : names;
    }

    private static @Nullable Object text(IExpressionContext context, @Nullable Object found) {
        return StandardExpressions.getConversionService(context.getConfiguration())
                .convert(context, found, String.class);
    }
}
