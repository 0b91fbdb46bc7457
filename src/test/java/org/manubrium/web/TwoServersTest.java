package org.manubrium.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.Trials;
import org.manubrium.security.Role;
import org.manubrium.store.FreshDatabases;

/** One encounter over two servers that share a database: nothing of it is kept in either. */
class TwoServersTest {
    /** In memory, and on PostgreSQL if the machine that tests has one. */
    static Stream<String> databases() {
        return Stream.concat(
                Stream.of("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1"),
                FreshDatabases.postgres().map(FreshDatabases::schemaIn).stream());
    }

    @ParameterizedTest(name = "database {index}")
    @MethodSource("databases")
    void anEncounterAlternatesBetweenServersAndLosesNothing(String database) throws IOException {
        try (TestServer one = TestServer.on(database);
                TestServer other = TestServer.on(database)) {
            TestBrowser here = one.signInAs(Role.EDUCATOR);
            TestBrowser there = here.at(other);
            String attempt = Trials.open(here, Trials.caseWith("root C7 left"));

            IntStream.range(0, 20).forEach(i -> {
                String position = i % 3 == 0 ? "lying-flat" : i % 3 == 1 ? "sitting-up" : "lying-45";
                TestBrowser next = i % 2 == 0 ? here : there;
                assertThat(Trials.send(next, attempt, "k" + i, "{\"type\":\"moved\",\"position\":\"" + position + "\"}")
                                .statusCode())
                        .isEqualTo(200);
            });
            JsonNode read = new ObjectMapper().readTree(there.json(attempt).body());

            List<String> expected =
                    IntStream.rangeClosed(1, 20).mapToObj(String::valueOf).toList();
            assertThat(read.path("events").findValuesAsText("seq")).containsExactlyElementsOf(expected);
            assertThat(Trials.send(here, attempt, "k19", "{\"type\":\"moved\",\"position\":\"sitting-up\"}")
                            .body())
                    .contains("\"seq\":20");
        }
    }
}
