package org.manubrium;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;

/** Encounters for tests: a case is written at the case desk and tried, as an educator does. */
public final class Trials {
    private Trials() {}

    /** A case of a woman of 47 with one lesion. */
    public static String caseWith(String site) {
        return """
                title: A patient for a test
                patient: {age: 47, sex: female}
                lesions: [{site: "%s", loss: 1, onset: 6 weeks}]
                """.formatted(site);
    }

    /** Begins an attempt at the case; its path. */
    public static String open(TestBrowser educator, String yaml) {
        String draft = location(educator.post("/educator/drafts", Map.of("text", yaml)));
        return location(educator.post(draft + "/try", Map.of()));
    }

    /** Sends an event, given without its key. */
    public static HttpResponse<String> send(TestBrowser browser, String attempt, String key, String event) {
        return browser.postJson(attempt + "/events", event.replaceFirst("\\{", "{\"key\":\"" + key + "\","));
    }

    public static String location(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        return answer.headers().firstValue("Location").orElseThrow().replaceFirst("\\?.*", "");
    }
}
