package org.manubrium.web.student;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.Map;
import org.manubrium.school.drill.Today;

/** The manoeuvres that a day's questions show, as the drawings read them. */
final class DrillJson {
    private static final ObjectMapper JSON = new ObjectMapper();

    private DrillJson() {}

    static JsonNode tree(String question) {
        try {
            return JSON.readTree(question);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a stored question is not JSON", e);
        }
    }

    static Map<String, Object> manoeuvres(Today today) {
        Map<String, Object> json = new LinkedHashMap<>();
        for (Today.Asked asked : today.questions()) {
            for (JsonNode panel : tree(asked.question()).path("panels")) {
                String id = panel.path("manoeuvre").asText();
                today.choices()
                        .examination()
                        .manoeuvre(id)
                        .ifPresent(manoeuvre -> json.put(id, ChoicesJson.manoeuvre(manoeuvre, today.choices())));
            }
        }
        return json;
    }
}
