package org.manubrium;

import static org.assertj.core.api.Assertions.assertThat;

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

/** The commands as they are called, on files. */
class CommandsTest {
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

    private String patient(String site, double loss, String onset) throws IOException {
        return file(
                "patient.yaml",
                "patient: {age: 47, sex: female}\nlesions: [{site: \"" + site + "\", loss: " + loss + ", onset: "
                        + onset + "}]\n");
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private JsonNode printed() throws IOException {
        return new ObjectMapper().readTree(out.toByteArray());
    }

    private JsonNode found(String manoeuvre, String side, String place) throws IOException {
        for (JsonNode one : printed()) {
            if (one.path("manoeuvre").asText().equals(manoeuvre)
                    && one.path("side").asText().equals(side)
                    && one.path("place").asText().equals(place)) {
                return one;
            }
        }
        throw new AssertionError(manoeuvre + " " + side + " " + place);
    }

    private String reading(String manoeuvre, String side, String place) throws IOException {
        JsonNode reading = found(manoeuvre, side, place).path("reading");
        return reading.path("grade").asText(reading.path("seen").asText());
    }

    /** First sacral root: ankle reflex, lateral heel (McGee 4th ed. ch. 64; ISNCSCI key sensory points). */
    @Test
    void examineReadsAFirstSacralRootLostForWeeks() throws IOException {
        assertThat(run("examine", patient("root S1 left", 1, "weeks"))).isEqualTo(ExitCode.DONE);

        assertThat(reading("ankle-reflex", "left", "")).isEqualTo("0");
        assertThat(found("knee-reflex", "left", "").path("normal").asBoolean()).isTrue();
        assertThat(reading("pin", "left", "s1-lateral-heel")).isEqualTo("0");
        assertThat(reading("plantar-response", "left", "")).isNotEqualTo("extensor");
        List<String> right = new ArrayList<>();
        printed().forEach(one -> {
            if (one.path("side").asText().equals("right") && !one.path("normal").asBoolean()) {
                right.add(one.toString());
            }
        });
        assertThat(right).isEmpty();
    }

    /** A hemisection (paediatric emergency text, cord syndromes, read in a secondary text). */
    @Test
    void examineReadsTheRightHalfOfTheCordCutWeeksAgo() throws IOException {
        run("examine", patient("spinal cord T8 right half", 1, "8 weeks"));

        assertThat(Integer.parseInt(reading("hip-flexion", "right", ""))).isLessThan(3);
        assertThat(reading("knee-reflex", "right", "")).isEqualTo("4");
        assertThat(reading("plantar-response", "right", "")).isEqualTo("extensor");
        assertThat(reading("joint-position", "right", "sole")).isEqualTo("absent");
        assertThat(reading("pin", "left", "t8-halfway-to-navel")).isEqualTo("2");
        assertThat(reading("pin", "left", "t10-navel")).isEqualTo("0");
        assertThat(reading("temperature", "left", "s1-lateral-heel")).isEqualTo("absent");
        assertThat(reading("hip-flexion", "left", "")).isEqualTo("5");
    }

    /**
     * All roots below the cone: flaccid legs, saddle loss, knee and ankle reflexes lost, anal reflex lost, plantars not
     * extensor; the belly and what lies above are spared (Dawodu 2018, cauda equina and conus, table 1).
     */
    @Test
    void examineReadsACaudaEquinaSaidWithoutSegmentOrSide() throws IOException {
        assertThat(run("examine", patient("cauda equina", 1, "6 weeks"))).isEqualTo(ExitCode.DONE);

        for (String side : List.of("right", "left")) {
            for (String lost : List.of("ankle-reflex", "knee-reflex", "ankle-dorsiflexion", "knee-extension")) {
                assertThat(reading(lost, side, "")).as(lost + side).isEqualTo("0");
            }
            assertThat(reading("pin", side, "s4-5-perianal")).isEqualTo("0");
            assertThat(reading("plantar-response", side, "")).isNotEqualTo("extensor");
            assertThat(found("pin", side, "t10-navel").path("normal").asBoolean())
                    .isTrue();
            assertThat(found("triceps-reflex", side, "").path("normal").asBoolean())
                    .isTrue();
        }
        assertThat(found("rectum-grip", "none", "").path("normal").asBoolean()).isFalse();
        assertThat(found("anal-wink", "none", "").path("normal").asBoolean()).isFalse();
    }

    /** The level decides whether the knee reflex goes (knee L2-L4, ankle S1: McGee 4th ed. ch. 63). */
    @Test
    void aCaudaEquinaOfTheLowerRootsKeepsTheKneeReflexAndAOneSidedOneTheOtherLeg() throws IOException {
        run("examine", patient("cauda equina L5-S5", 1, "6 weeks"), "knee-reflex", "ankle-reflex");
        assertThat(found("knee-reflex", "left", "").path("normal").asBoolean()).isTrue();
        assertThat(reading("ankle-reflex", "left", "")).isEqualTo("0");

        run("examine", patient("cauda equina left", 1, "6 weeks"), "knee-reflex", "ankle-reflex");
        assertThat(reading("knee-reflex", "left", "")).isEqualTo("0");
        assertThat(found("knee-reflex", "right", "").path("normal").asBoolean()).isTrue();
        assertThat(found("ankle-reflex", "right", "").path("normal").asBoolean())
                .isTrue();
    }

    private boolean normal(String manoeuvre, String side, String place) throws IOException {
        return found(manoeuvre, side, place).path("normal").asBoolean();
    }

    /**
     * A suspended cape: pin and temperature lost over both arms, touch, vibration and position kept, arm reflexes low, legs
     * spared (spinal cord syndromes notes 2010, read in a secondary text).
     */
    @Test
    void examineReadsACavityOfTheCordInTheNeck() throws IOException {
        run("examine", patient("spinal cord C5-T1 central", 1, "2 years"));

        for (String side : List.of("right", "left")) {
            for (String point : List.of("c6-thumb", "c8-little-finger", "t1-inner-elbow")) {
                assertThat(reading("pin", side, point)).isEqualTo("0");
                assertThat(reading("temperature", side, point)).isEqualTo("absent");
                assertThat(normal("light-touch", side, point))
                        .as("touch at %s", point)
                        .isTrue();
                assertThat(normal("vibration", side, point)).isTrue();
            }
            assertThat(normal("joint-position", side, "index-fingertip")).isTrue();
            assertThat(normal("pin", side, "t4-nipple-level")).isTrue();
            assertThat(normal("pin", side, "l5-dorsum-of-foot")).isTrue();
            for (String reflex : List.of("biceps-reflex", "brachioradialis-reflex", "triceps-reflex")) {
                assertThat(reading(reflex, side, "")).isIn("0", "1");
            }
            assertThat(normal("knee-reflex", side, "")).isTrue();
        }
    }

    /** When it presses on the tracts to the legs: upper motor neurone signs below (the same notes: later). */
    @Test
    void aCavityThatPressesOnTheTractsMakesTheLegsBrisk() throws IOException {
        run("examine", file("two.yaml", """
                patient: {age: 40, sex: female}
                lesions:
                  - {site: spinal cord C5-T1 central, loss: 1, onset: 2 years}
                  - {site: lateral corticospinal tract C8 both, loss: 0.4, onset: 1 year}
                """));

        for (String side : List.of("right", "left")) {
            assertThat(reading("knee-reflex", side, "")).isIn("3", "4");
            assertThat(reading("plantar-response", side, "")).isEqualTo("extensor");
            assertThat(reading("biceps-reflex", side, "")).isIn("0", "1");
        }
    }

    /** X62: McMaster Textbook of Internal Medicine, read in a secondary text. */
    @Test
    void examineTellsAConsolidatedLowerLobeFromAnEffusion() throws IOException {
        run("examine", patient("left lower lobe consolidation", 1, "4 days"));
        assertThat(reading("percussion-back", "left", "lower-back")).isEqualTo("dull");
        assertThat(reading("breath-sounds-back", "left", "lower-back")).isEqualTo("bronchial");
        assertThat(reading("vocal-resonance-back", "left", "lower-back")).isEqualTo("increased");
        assertThat(reading("trachea", "left", "")).isEqualTo("central");
        assertThat(normal("percussion-back", "right", "lower-back")).isTrue();
        assertThat(normal("percussion-back", "left", "upper-back")).isTrue();

        run("examine", patient("left pleural effusion", 1, "4 weeks"));
        assertThat(reading("percussion-back", "left", "lower-back")).isEqualTo("stony-dull");
        assertThat(reading("breath-sounds-back", "left", "lower-back")).isIn("reduced", "absent");
        assertThat(reading("vocal-resonance-back", "left", "lower-back")).isIn("reduced", "absent");
    }

    @Test
    void aStateOfTheLungNeedsASideAndAPlace() throws IOException {
        run("examine", patient("lower lobe consolidation", 1, "days"));
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("names no side");
        run("examine", patient("effusion at the left elbow", 1, "days"));
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("no place \"elbow\"", "lower lobe");
    }

    @Test
    void examineTakesManoeuvresWithASideAndPrintsTheAgreedKeys() throws IOException {
        String file = patient("root C7 left", 0.8, "6 weeks");

        assertThat(run("examine", file, "triceps-reflex:left", "pulse-rate")).isEqualTo(ExitCode.DONE);

        assertThat(printed()).hasSize(2);
        List<String> keys = new ArrayList<>();
        printed().get(0).fieldNames().forEachRemaining(keys::add);
        assertThat(keys).containsExactly("manoeuvre", "side", "place", "position", "reading", "normal", "meaning");
        assertThat(printed().get(1).path("side").asText()).isEqualTo("none");
    }

    @Test
    void anUnknownManoeuvreAndAnUnknownSiteAreRefusedByName() throws IOException {
        assertThat(run("examine", patient("root C7 left", 1, "weeks"), "tricep-reflex"))
                .isEqualTo(ExitCode.WRONG_USE);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("tricep-reflex", "triceps-reflex");
        assertThat(run("examine", patient("root C9 left", 1, "weeks"))).isEqualTo(ExitCode.PROBLEMS);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("patient.yaml:2", "C9");
    }

    @Test
    void checkPrintsEveryProblemWithItsLine() throws IOException {
        String file = file("bad.yaml", "patient: {age: 470, sex: female}\nlesions: [{site: \"root C7\", loss: 0.5}]\n");

        assertThat(run("check", file)).isEqualTo(ExitCode.PROBLEMS);

        assertThat(printed().findValuesAsText("line")).containsExactly("1", "2");
        assertThat(printed().get(0).path("path").asText()).isEqualTo(file);
    }

    @Test
    void markPrintsTotalDomainsAndLines() throws IOException {
        String attempt = file("attempt.yaml", "- {type: asked, question: consent}\n- {type: handed-in}\n");

        assertThat(run("mark", "cases/joiner.yaml", attempt)).isEqualTo(ExitCode.DONE);

        assertThat(printed().path("total").asDouble()).isZero();
        assertThat(printed().path("domains")).hasSize(4);
        printed()
                .path("lines")
                .forEach(line -> assertThat(line.path("source").asText()).isNotBlank());
    }

    @Test
    void theVocabularyComesWithSourcesAndConfidence() throws IOException {
        for (String command : List.of("manoeuvres", "conditions", "sites")) {
            assertThat(run(command)).isEqualTo(ExitCode.DONE);
            assertThat(printed()).hasSizeGreaterThan(100);
            printed().forEach(one -> cited(command, one));
        }
    }

    /** A region has no source of its own: each structure that lies there has. */
    private static void cited(String command, JsonNode one) {
        if (one.has("parts")) {
            one.path("parts").forEach(part -> cited(command, part));
            return;
        }
        assertThat(one.path("confidence").asText()).as(command + one).isNotBlank();
        assertThat(one.path("sources")).as(command + one).isNotEmpty();
    }
}
