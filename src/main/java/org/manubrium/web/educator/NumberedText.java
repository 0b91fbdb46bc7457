package org.manubrium.web.educator;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.casefile.Problem;

/** A text line by line, each with its number and what is wrong with it. */
final class NumberedText {
    private NumberedText() {}

    static List<Map<String, Object>> of(String text, List<Problem> problems) {
        Map<Integer, List<Map<String, Object>>> byLine = new HashMap<>();
        problems.forEach(problem -> byLine.computeIfAbsent(problem.line(), line -> new ArrayList<>())
                .add(problem(problem)));
        String[] lines = text.split("\n", -1);
        List<Map<String, Object>> numbered = new ArrayList<>();
        for (int i = 0; i < lines.length; i++) {
            boolean last = i == lines.length - 1;
            if (!last || !lines[i].isEmpty() || byLine.containsKey(i + 1)) {
                numbered.add(
                        Map.of("number", i + 1, "text", lines[i], "problems", byLine.getOrDefault(i + 1, List.of())));
            }
        }
        return numbered;
    }

    static Map<String, Object> problem(Problem problem) {
        return Map.of("line", problem.line(), "rule", problem.rule().replace('-', ' '), "text", problem.text());
    }
}
