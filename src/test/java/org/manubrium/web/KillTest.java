package org.manubrium.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.Trials;

/** A server that is killed while it writes forgets nothing that it has acknowledged. */
class KillTest {
    private static final int EVENTS = 200;
    private static final int KILL_AFTER = 60;
    private static final Pattern ADDRESS =
            Pattern.compile("(http://\\S+/first-educator/\\S+|http://127\\.0\\.0\\.1:\\d+/)");

    @TempDir
    Path data;

    private record Running(Process process, URI address) {}

    @Test
    void nothingThatWasAcknowledgedIsMissingAfterAKill() throws Exception {
        Running before = start("first-educator");
        TestBrowser educator = TestBrowser.at(before.address().resolve("/"));
        assertThat(educator.post(
                                before.address().getPath(),
                                Map.of("name", "first", "display-name", "First", "password", TestServer.PASSWORD))
                        .statusCode())
                .isEqualTo(303);
        String attempt = Trials.open(educator, Trials.caseWith("root C7 left"));
        Set<String> acknowledged = ConcurrentHashMap.newKeySet();
        CountDownLatch enough = new CountDownLatch(KILL_AFTER);
        ExecutorService students = Executors.newFixedThreadPool(4);
        String token = educator.csrf();
        for (int i = 0; i < EVENTS; i++) {
            String key = "event-" + i;
            students.execute(() -> write(educator, token, attempt, key, acknowledged, enough));
        }

        assertThat(enough.await(60, TimeUnit.SECONDS)).isTrue();
        before.process().destroyForcibly().waitFor();
        students.shutdownNow();
        assertThat(students.awaitTermination(30, TimeUnit.SECONDS)).isTrue();

        Running after = start("127.0.0.1");
        TestBrowser again = TestBrowser.at(after.address());
        again.post("/sign-in", Map.of("name", "first", "password", TestServer.PASSWORD));
        String kept = again.json(attempt).body();
        after.process().destroyForcibly().waitFor();
        assertThat(acknowledged).hasSizeBetween(KILL_AFTER, EVENTS - 1);
        assertThat(acknowledged).allSatisfy(key -> assertThat(kept).contains("\"" + key + "\""));
    }

    private static void write(
            TestBrowser student,
            String token,
            String attempt,
            String key,
            Set<String> acknowledged,
            CountDownLatch enough) {
        try {
            String event = "{\"key\":\"" + key + "\",\"type\":\"asked\",\"question\":\"pain\"}";
            int status = student.send(student.request(attempt + "/events")
                            .header("Accept", "application/json")
                            .header("Content-Type", "application/json")
                            .header("X-CSRF-Token", token)
                            .POST(java.net.http.HttpRequest.BodyPublishers.ofString(event)))
                    .statusCode();
            if (status == 200) {
                acknowledged.add(key);
                enough.countDown();
            }
        } catch (RuntimeException e) {
            // The server is gone: this one was not acknowledged.
            Thread.currentThread().interrupt();
        }
    }

    private Running start(String printed) throws IOException {
        Process process = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.manubrium.Main",
                        "serve",
                        "--data",
                        data.toString(),
                        "--port",
                        "0",
                        "--metrics-port",
                        "0"))
                .redirectErrorStream(true)
                .start();
        BufferedReader lines = process.inputReader(StandardCharsets.UTF_8);
        String line = lines.readLine();
        StringBuilder said = new StringBuilder();
        while (line != null) {
            said.append(line).append('\n');
            Matcher address = ADDRESS.matcher(line);
            if (line.contains(printed) && address.find()) {
                drain(lines);
                return new Running(process, URI.create(address.group(1)));
            }
            line = lines.readLine();
        }
        throw new AssertionError("the server did not start:\n" + said);
    }

    /** So that the server never waits for someone to read what it says. */
    private static void drain(BufferedReader lines) {
        Thread reader = new Thread(() -> lines.lines().forEach(line -> {}));
        reader.setDaemon(true);
        reader.start();
    }
}
