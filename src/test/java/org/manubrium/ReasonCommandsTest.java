package org.manubrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.manubrium.cli.CommandLine;
import org.manubrium.cli.Console;
import org.manubrium.cli.ExitCode;

/** The commands {@code reason} and {@code plan} as they are called, on files. */
class ReasonCommandsTest {
    private static final String FOOT_DROP = """
            patient: {age: 52, sex: male, seed: 5}
            conditions: [{is: root-compression, level: L5, side: right, severity: 0.85}]
            differential:
              - {is: root-compression, level: L5, side: right}
              - {is: fibular-neck-palsy, side: right}
              - {is: sciatic-palsy, side: right}
              - {is: leg-area-stroke, side: left}
            """;

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private ExitCode run(String... words) {
        out.reset();
        err.reset();
        Console console = new Console(
                new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
        return new CommandLine(Main.commands(), console).run(List.of(words));
    }

    private String file() throws IOException {
        return Files.writeString(folder.resolve("foot.yaml"), FOOT_DROP).toString();
    }

    private JsonNode printed() throws IOException {
        return new ObjectMapper().readTree(out.toByteArray());
    }

    private static double chance(JsonNode step, String diagnosis) {
        for (JsonNode one : step.path("posterior")) {
            if (one.path("diagnosis").asText().equals(diagnosis)) {
                return one.path("chance").asDouble();
            }
        }
        throw new AssertionError(diagnosis);
    }

    @Test
    void reasonPrintsWhatIsThoughtBeforeAndAfterEachStep() throws IOException {
        assertThat(run("reason", file(), "ankle-dorsiflexion:right", "hip-abduction:right=3", "acuity:left"))
                .isEqualTo(ExitCode.DONE);

        JsonNode steps = printed();
        assertThat(steps).hasSize(4);
        steps.forEach(step -> {
            double sum = 0;
            for (JsonNode one : step.path("posterior")) {
                sum += one.path("chance").asDouble();
            }
            assertThat(sum).isEqualTo(1, within(0.001));
        });
        assertThat(steps.get(1).path("next").path("manoeuvre").asText()).isIn("hip-abduction", "foot-inversion");
        assertThat(chance(steps.get(2), "root-compression")).isGreaterThan(0.9);
        assertThat(steps.get(2).path("bits").asDouble())
                .isLessThan(steps.get(0).path("bits").asDouble());
        assertThat(steps.get(2).path("published").get(0).path("source").asText())
                .contains("McGee");
        assertThat(steps.get(3).path("seen").asText()).isEqualTo("tells nothing here");
        assertThat(steps.get(3).path("bits")).isEqualTo(steps.get(2).path("bits"));
    }

    /** Full power of hip abduction speaks for the nerve (McGee, appendix of likelihood ratios: 0.1). */
    @Test
    void anOutcomeThatIsSaidTakesThePlaceOfThePatients() throws IOException {
        run("reason", file(), "ankle-dorsiflexion:right=3", "hip-abduction:right=5", "foot-inversion:right=5");

        assertThat(chance(printed().get(3), "fibular-neck-palsy"))
                .isGreaterThan(chance(printed().get(3), "root-compression"));
    }

    @Test
    void reasonRefusesWhatItCannotRead() throws IOException {
        assertThat(run("reason")).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run("reason", file(), "hip-abduction")).isEqualTo(ExitCode.WRONG_USE);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains(":right or :left");
        assertThat(run("reason", file(), "hip-abduction:right=9")).isEqualTo(ExitCode.WRONG_USE);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("[0, 1, 2, 3, 4, 5]");
        assertThat(run("reason", file(), "pin:right@elbow")).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run("reason", folder.resolve("none.yaml").toString())).isEqualTo(ExitCode.WRONG_USE);
        Path bad = Files.writeString(folder.resolve("bad.yaml"), "patient: {age: 4, sex: male}");
        assertThat(run("reason", bad.toString())).isEqualTo(ExitCode.PROBLEMS);
    }

    @Test
    void planPrintsTheBestOrderWithItsTime() throws IOException {
        assertThat(run("plan", file(), "romberg", "plantar-response", "triceps-reflex:left", "hip-extension"))
                .isEqualTo(ExitCode.DONE);

        List<String> positions = new ArrayList<>();
        List<String> done = new ArrayList<>();
        printed().path("stops").forEach(stop -> {
            positions.add(stop.path("position").asText());
            stop.path("manoeuvres").forEach(one -> done.add(one.asText()));
        });
        assertThat(positions).startsWith("lying-45").contains("standing").doesNotHaveDuplicates();
        assertThat(done)
                .containsExactlyInAnyOrder(
                        "romberg",
                        "plantar-response:right",
                        "plantar-response:left",
                        "triceps-reflex:left",
                        "hip-extension:right",
                        "hip-extension:left");
        assertThat(printed().path("changes").asInt()).isEqualTo(positions.size() - 1);
    }

    @Test
    void withoutManoeuvresThoseOfTheCaseArePlanned() throws IOException {
        assertThat(run("plan", file())).isEqualTo(ExitCode.DONE);
        assertThat(out.toString(StandardCharsets.UTF_8)).contains(":right").contains(":left");
    }

    /** Common practice, no source: seven to eight minutes for a practised examiner. The tabled seconds are not bent to it. */
    @Test
    void theFullRoutineStandsBesideWhatPractisedExaminersTake() throws IOException {
        assertThat(run("plan", file(), "--routine")).isEqualTo(ExitCode.DONE);

        assertThat(printed().path("practised").path("leastSeconds").asInt()).isEqualTo(420);
        assertThat(printed().path("practised").path("mostSeconds").asInt()).isEqualTo(480);
        assertThat(printed().path("seconds").asInt()).isGreaterThan(480);
        assertThat(printed().path("changes").asInt()).isLessThan(10);
    }

    @Test
    void planRefusesWrongUse() throws IOException {
        assertThat(run("plan")).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run("plan", file(), "flying")).isEqualTo(ExitCode.WRONG_USE);
    }
}
