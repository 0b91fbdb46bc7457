package org.manubrium;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.chrome.ChromeDriver;

/** What came over the network into a browser that listens, headers and all, with nothing taken from its cache. */
public final class TestTraffic {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final ChromeDriver driver;

    public TestTraffic(Chromium listening) {
        this.driver = listening.driver();
        driver.executeCdpCommand("Network.enable", Map.of());
        driver.executeCdpCommand("Network.setCacheDisabled", Map.of("cacheDisabled", true));
    }

    /** One answer that came. */
    public record Came(String url, long bytes) {
        boolean counts() {
            return !url.contains("/static/fonts/");
        }
    }

    /** What has come in since this was last asked. */
    public List<Came> since() {
        Map<String, String> urls = new HashMap<>();
        return driver.manage().logs().get("performance").getAll().stream()
                .map(entry -> message(entry.getMessage()))
                .<Came>mapMulti((message, took) -> {
                    JsonNode params = message.path("params");
                    String request = params.path("requestId").asText();
                    switch (message.path("method").asText()) {
                        case "Network.requestWillBeSent" ->
                            urls.put(request, params.path("request").path("url").asText());
                        case "Network.loadingFinished" ->
                            took.accept(new Came(
                                    urls.getOrDefault(request, ""),
                                    params.path("encodedDataLength").asLong()));
                        default -> {}
                    }
                })
                .toList();
    }

    /** All of them together, in bytes, without fonts. */
    public static long bytes(List<Came> came) {
        return came.stream().filter(Came::counts).mapToLong(Came::bytes).sum();
    }

    private static JsonNode message(String entry) {
        try {
            return JSON.readTree(entry).path("message");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
