package org.manubrium.school.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.store.Attempt;
import org.manubrium.store.CaseFile;
import org.manubrium.store.SetCase;
import org.manubrium.store.StoredMark;

/** The demo's school, seeded once. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FennbrookTest {
    private final TestServer server = TestServer.demo();

    @BeforeAll
    @Timeout(300)
    void waitForTheCasesThatComeAfterOpening() throws InterruptedException {
        waitForAll(server);
    }

    private static void waitForAll(TestServer demo) throws InterruptedException {
        while (demo.database()
                        .direct(stores -> stores.setCases()
                                .of(stores.cohorts().all().get(0).id()))
                        .size()
                < ShippedCases.inTheDemo().size()) {
            Thread.sleep(100);
        }
    }

    @AfterAll
    void close() {
        server.close();
    }

    @Test
    void everyShippedCaseIsListed() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("cases"))) {
            List<String> slugs = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .map(name -> name.replace(".yaml", ""))
                    .toList();

            assertThat(ShippedCases.names()).containsExactlyInAnyOrderElementsOf(slugs);
            assertThat(slugs).containsAll(ShippedCases.inTheDemo());
        }
    }

    @Test
    void everyCaseOfTheDemoIsInUseAndSet() {
        List<CaseFile> cases = server.database().direct(stores -> stores.cases().all());

        assertThat(cases).extracting(CaseFile::slug).containsExactlyInAnyOrderElementsOf(ShippedCases.inTheDemo());
        assertThat(set()).hasSameSizeAs(cases);
    }

    @Test
    void handedInAttemptsWereExaminedEventByEventAndMarked() {
        List<Attempt> attempts = attempts();

        assertThat(attempts).hasSize(27).allMatch(Attempt::isHandedIn);
        for (Attempt attempt : attempts) {
            int events = server.database()
                    .direct(stores -> stores.events().of(attempt.id()))
                    .size();
            assertThat(events).isGreaterThan(10);
        }
        assertThat(totals()).hasSize(27).allMatch(total -> total > 20 && total <= 100);
        assertThat(totals().stream().distinct().count()).isGreaterThan(15);
    }

    @Test
    @Timeout(300)
    void sameSeedMakesTheSameMarks() throws InterruptedException {
        try (TestServer other = TestServer.demo()) {
            waitForAll(other);
            assertThat(totals(other)).isEqualTo(totals());
        }
    }

    @Test
    void everyoneFindsSomethingToLookAt() {
        TestBrowser student = enter("student");
        TestBrowser reviewer = enter("reviewer");
        TestBrowser educator = enter("educator");

        assertThat(student.page("/student").body()).contains("A joiner with pain in his arm", "Leaderboard of");
        assertThat(educator.page("/educator").body()).contains("A joiner with pain in his arm", "version 1");
        long cohort = cohort();
        assertThat(reviewer.page("/reviewer/cohorts/" + cohort).body()).contains("12 of 13", "the 2 set cases");
        Attempt attempt = attempts().get(0);
        assertThat(reviewer.page("/reviewer/cohorts/" + cohort + "/attempts/" + attempt.id())
                        .body())
                .contains("Attempt", "Back to the case");
    }

    @Test
    void mapAndWrongAnswersShowForEachSatCase() {
        TestBrowser reviewer = enter("reviewer");
        for (SetCase set : set()) {
            String body = reviewer.page("/reviewer/cohorts/" + cohort() + "/cases/" + set.id())
                    .body();
            boolean sat = server.database()
                            .direct(stores -> stores.attempts().ofSetCase(set.id()))
                            .size()
                    > 0;
            assertThat(body.contains("class=\"map\"")).isEqualTo(sat);
        }
    }

    private TestBrowser enter(String role) {
        TestBrowser browser = server.browser();
        browser.post("/demo/enter", Map.of("role", role));
        return browser;
    }

    private long cohort() {
        return server.database().direct(stores -> stores.cohorts().all()).get(0).id();
    }

    private List<SetCase> set() {
        return server.database().direct(stores -> stores.setCases().of(cohort()));
    }

    private List<Attempt> attempts() {
        List<Attempt> attempts = new ArrayList<>();
        set().forEach(one -> attempts.addAll(
                server.database().direct(stores -> stores.attempts().ofSetCase(one.id()))));
        return attempts;
    }

    private List<Double> totals() {
        return totals(server);
    }

    private List<Double> totals(TestServer from) {
        List<Double> totals = new ArrayList<>();
        for (SetCase one : set()) {
            from.database().direct(stores -> stores.marks().ofSetCase(one.id())).stream()
                    .map(StoredMark::total)
                    .forEach(totals::add);
        }
        return totals;
    }
}
