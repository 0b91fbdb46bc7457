package org.manubrium.web.student;

import com.fasterxml.jackson.annotation.JsonRawValue;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.exchange.EventJson;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.school.bedside.BedsideTime;
import org.manubrium.school.bedside.Encounter;
import org.manubrium.school.bedside.Known;
import org.manubrium.school.bedside.Shown;
import org.manubrium.web.shell.Markdown;

/** An encounter and its events, as the browser reads them. */
final class EncounterJson {
    private EncounterJson() {}

    /** What an event is answered with; {@code shown} is passed on to the letter, as it was stored. */
    record Answer(int seq, BedsideTime clock, @JsonRawValue String shown) {
        static Answer of(Shown event) {
            return new Answer(event.seq(), event.clock(), raw(event.shown()));
        }
    }

    static Map<String, Object> of(Encounter encounter) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put(
                "attempt",
                Map.of(
                        "id",
                        encounter.attempt(),
                        "title",
                        encounter.patient().title(),
                        "handedIn",
                        encounter.handedIn()));
        json.put("patient", patient(encounter.patient()));
        json.put("clock", encounter.clock());
        json.putAll(ChoicesJson.of(encounter.choices(), begun(encounter)));
        json.put("events", encounter.events().stream().map(EncounterJson::event).toList());
        return json;
    }

    private static Set<String> begun(Encounter encounter) {
        return encounter.events().stream()
                .map(Shown::event)
                .flatMap(event -> event instanceof Event.Probed probed
                        ? Stream.of(probed.item().manoeuvre())
                        : Stream.empty())
                .collect(Collectors.toSet());
    }

    private static Map<String, Object> patient(Known known) {
        return Map.of(
                "name",
                known.name(),
                "age",
                known.age(),
                "sex",
                known.sex(),
                "vignetteHtml",
                Markdown.toHtml(known.vignette()),
                "observations",
                known.observations(),
                "expect",
                known.expect());
    }

    private static ObjectNode event(Shown shown) {
        ObjectNode json = EventJson.tree(new Logged.Keyed(shown.key(), shown.event()));
        json.put("seq", shown.seq());
        json.putPOJO("clock", shown.clock());
        json.putRawValue("shown", new RawValue(raw(shown.shown())));
        return json;
    }

    private static String raw(String json) {
        return json.isEmpty() ? "null" : json;
    }
}
