package org.manubrium.web.shell;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.school.mark.Lessons;

/** What an attempt teaches, as the page's model. */
final class LessonsView {
    private LessonsView() {}

    static Map<String, Object> model(Lessons lessons) {
        Map<String, Object> model = new HashMap<>();
        model.put("said", lessons.said());
        model.put(
                "pathways", lessons.pathways().stream().map(LessonsView::drawn).toList());
        model.put(
                "onPath",
                lessons.pathways().stream()
                        .anyMatch(drawn -> drawn.stations().stream().anyMatch(Lessons.Station::yours)));
        model.put("apart", lessons.apart());
        model.put("drill", lessons.drill());
        model.put(
                "elsewhere",
                lessons.elsewhere().stream()
                        .map(taught ->
                                Map.of("asked", taught.asked(), "here", taught.here(), "elsewhere", taught.elsewhere()))
                        .toList());
        return model;
    }

    private static Map<String, Object> drawn(Lessons.Drawn drawn) {
        List<Map<String, Object>> stations = drawn.stations().stream()
                .map(station -> Map.<String, Object>of(
                        "place", station.place(), "lesion", station.lesion(), "yours", station.yours()))
                .toList();
        return Map.of("sign", drawn.sign(), "stations", stations);
    }
}
