package org.manubrium;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.UUID;
import org.manubrium.store.SetCase;

/** A student's visit to a bedside: sends events as the page does, and reads the encounter as the page does. */
public final class TestVisit {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final TestBrowser browser;
    private final String path;
    private final String token;

    private TestVisit(TestBrowser browser, String path) {
        this.browser = browser;
        this.path = path;
        this.token = browser.csrf();
    }

    /** Begins a set case by the form on the student's page. */
    public static TestVisit begin(TestBrowser browser, SetCase set) {
        HttpResponse<String> answer = browser.post("/attempts", Map.of("set", String.valueOf(set.id())));
        return of(browser, answer.headers().firstValue("Location").orElseThrow());
    }

    /** The attempt at this path, in this browser. */
    public static TestVisit of(TestBrowser browser, String path) {
        return new TestVisit(browser, path);
    }

    public TestBrowser browser() {
        return browser;
    }

    /** {@code /attempts/} and its number. */
    public String path() {
        return path;
    }

    /** Sends an event, given as the inside of a JSON object, under a new key. */
    public HttpResponse<String> send(String event) {
        return send(UUID.randomUUID().toString(), event);
    }

    /** Sends an event, given as the inside of a JSON object, under this key. */
    public HttpResponse<String> send(String key, String event) {
        return raw("{\"key\":\"" + key + "\"," + event + "}");
    }

    /** Sends this text as an event. */
    public HttpResponse<String> raw(String body) {
        return browser.send(browser.request(path + "/events")
                .header("Accept", "application/json")
                .header("Content-Type", "application/json")
                .header("X-CSRF-Token", token)
                .POST(BodyPublishers.ofString(body)));
    }

    /** The encounter as the page reads it. */
    public JsonNode read() {
        return json(browser.json(path));
    }

    /** The events of the encounter. */
    public JsonNode events() {
        return read().path("events");
    }

    /** An answer's body as a tree. */
    public static JsonNode json(HttpResponse<String> answer) {
        try {
            return JSON.readTree(answer.body());
        } catch (JsonProcessingException e) {
            throw new AssertionError(answer.statusCode() + " is not JSON: " + answer.body(), e);
        }
    }
}
