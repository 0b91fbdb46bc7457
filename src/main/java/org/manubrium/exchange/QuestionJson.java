package org.manubrium.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import org.manubrium.learning.question.SignQuestion;
import org.manubrium.learning.question.SignQuestion.Look;
import org.manubrium.learning.question.SignQuestion.Panel;

/** Short questions as JSON, what is asked apart from what is right. */
public final class QuestionJson {
    private static final ObjectMapper JSON = new ObjectMapper();

    private QuestionJson() {}

    /** What is right and why. */
    public record Solution(int right, String why, String source, String confidence) {}

    /** What is shown and asked; not a word of what is right, nor the fact, which may say it. */
    public static String asked(SignQuestion question, String last) {
        ObjectNode node = JSON.createObjectNode();
        node.put("asked", question.asked());
        ArrayNode panels = node.putArray("panels");
        question.panels().forEach(panel -> put(panels.addObject(), panel));
        ArrayNode options = node.putArray("options");
        question.options().forEach(options::add);
        options.add(last);
        return node.toString();
    }

    private static void put(ObjectNode node, Panel panel) {
        node.put("label", panel.label());
        node.put("manoeuvre", panel.manoeuvre());
        ArrayNode looks = node.putArray("looks");
        for (Look look : panel.looks()) {
            ObjectNode shown = looks.addObject();
            shown.put("side", look.side().word());
            shown.put("place", look.place());
            ObjectNode technique = shown.putObject("technique");
            look.technique().forEach(technique::put);
            shown.putRawValue("shown", new RawValue(AppearanceJson.write(look.appearance())));
        }
    }

    public static String solution(SignQuestion question) {
        return JSON.valueToTree(new Solution(
                        question.right(),
                        question.why(),
                        question.origin().source(),
                        question.origin().confidence()))
                .toString();
    }

    /** @throws BadRecord when it is no solution */
    public static Solution readSolution(String json) {
        try {
            return JSON.readValue(json, Solution.class);
        } catch (JsonProcessingException e) {
            throw new BadRecord("solution", "what is right and why", e.getOriginalMessage());
        }
    }

    /**
     * The words of an option of a question.
     *
     * @throws BadRecord when there is no such option
     */
    public static String option(String question, int at) {
        try {
            var options = JSON.readTree(question).path("options");
            if (at >= 0 && at < options.size()) {
                return options.get(at).asText();
            }
        } catch (JsonProcessingException e) {
            throw new BadRecord("question", "a question", e.getOriginalMessage());
        }
        throw new BadRecord("option", "one of the options", String.valueOf(at));
    }
}
