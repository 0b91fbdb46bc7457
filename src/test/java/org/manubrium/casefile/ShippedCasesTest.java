package org.manubrium.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Sign;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** The cases that come with the programme, and the examples of their documentation. */
class ShippedCasesTest {
    private static final Reference REFERENCE = Tables.shipped();
    private static final Path FOLDER = Path.of("cases");
    private static final Pattern EXAMPLE =
            Pattern.compile("```yaml\n(.*?)```(?:\n+```text\n(.*?)```)?", Pattern.DOTALL);

    static Stream<Path> cases() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Each case is read once: reading one examines its patient and those of its differential. */
    private static final Map<Path, CaseFile> READ = new HashMap<>();

    private static CaseFile read(Path path) {
        return READ.computeIfAbsent(path, ShippedCasesTest::freshly);
    }

    private static CaseFile freshly(Path path) {
        try {
            CaseReading reading = CaseFile.read(Files.readString(path), path.toString(), REFERENCE);
            assertThat(reading.problems()).isEmpty();
            return reading.caseFile().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> abnormal(CaseFile file) {
        return REFERENCE.signs().examine(file.body(REFERENCE)).stream()
                .filter(sign -> sign.normal().equals(Optional.of(false)))
                .map(sign -> sign.item().toString())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyCaseIsWithoutProblemAndHasWhatMakesItGood(Path path) {
        CaseFile file = read(path);

        assertThat(path).hasFileName(file.slug() + ".yaml");
        assertThat(file.differential()).hasSizeBetween(5, 7).anyMatch(d -> d.is().equals("healthy"));
        assertThat(file.conclusion().next()).isNotEmpty();
        assertThat(file.vignette().split("\\s+")).hasSizeGreaterThan(50);
        assertThat(file.observations()).isNotEmpty();
        assertThat(file.patient().town()).isEqualTo("Averstock");
        assertThat(file.history()).containsKeys("consent", "pain", "faints", "chaperone");
    }

    private static List<CaseFile> all() {
        return cases().map(ShippedCasesTest::read).toList();
    }

    private static int current(CaseFile file) {
        return file.current(REFERENCE).size();
    }

    @Test
    void thereAreTwentyPatientsOrMoreFromEasyToHardOfAllAgesBuildsAndSkinTones() {
        List<CaseFile> all = all();

        assertThat(all).hasSizeGreaterThanOrEqualTo(20);
        for (Difficulty difficulty : Difficulty.values()) {
            assertThat(all)
                    .filteredOn(c -> c.difficulty().equals(Optional.of(difficulty)))
                    .as(difficulty.word())
                    .hasSizeGreaterThanOrEqualTo(5);
        }
        assertThat(all).allMatch(c -> c.difficulty().isPresent());
        assertThat(all).filteredOn(c -> c.patient().age() < 35).hasSizeGreaterThanOrEqualTo(4);
        assertThat(all).filteredOn(c -> c.patient().age() >= 65).hasSizeGreaterThanOrEqualTo(4);
        for (String build : List.of("slight", "average", "heavy")) {
            assertThat(all).filteredOn(c -> c.patient().build().equals(build)).hasSizeGreaterThanOrEqualTo(4);
        }
        for (String tone : List.of("light", "brown", "dark")) {
            assertThat(all).filteredOn(c -> c.patient().skinTone().equals(tone)).hasSizeGreaterThanOrEqualTo(5);
        }
        for (Sex sex : Sex.values()) {
            assertThat(all).filteredOn(c -> c.patient().sex() == sex).hasSizeGreaterThanOrEqualTo(8);
        }
        assertThat(all).extracting(c -> c.patient().name()).doesNotHaveDuplicates();
    }

    /** At most eight items of some thousand are abnormal, both sides and every place counted. */
    @Test
    void fivePatientsAreNearlyNormal() {
        assertThat(all()).filteredOn(c -> abnormal(c).size() <= 8).hasSizeGreaterThanOrEqualTo(5);
    }

    @Test
    void threePatientsHaveTwoConditions() {
        assertThat(all()).filteredOn(c -> c.conditions().size() == 2).hasSizeGreaterThanOrEqualTo(3);
        assertThat(all()).filteredOn(c -> current(c) == 2).hasSizeGreaterThanOrEqualTo(3);
    }

    @Test
    void everyExpectationOfAnAuthorIsBorneOut() {
        assertThat(all()).filteredOn(c -> !c.expected().isEmpty()).hasSizeGreaterThanOrEqualTo(8);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyKeyCompilesWithEssentialManoeuvresThatTellTheDifferentialApart(Path path) {
        CaseFile file = read(path);
        var key = new CaseKeys(REFERENCE).of(file);

        assertThat(key.essentials()).hasSizeBetween(2, 40);
        assertThat(key.conclusion().truths()).isNotEmpty();
    }

    @Test
    void theHealthyPersonShowsNothingAbnormalAndTheOthersWhatAilsThem() {
        assertThat(abnormal(read(FOLDER.resolve("apprentice.yaml")))).isEmpty();
        assertThat(abnormal(read(FOLDER.resolve("joiner.yaml"))))
                .contains("triceps-reflex:left", "elbow-extension:left", "pin:left@c7-middle-finger")
                .allMatch(item -> item.contains(":left"));
        assertThat(abnormal(read(FOLDER.resolve("gardener.yaml"))))
                .contains("ankle-reflex:right", "ankle-reflex:left", "pin:right@s1-lateral-heel");
        assertThat(abnormal(read(FOLDER.resolve("organist.yaml"))))
                .contains("pupil-light-direct:left", "lid-height:left")
                .allMatch(item -> item.contains(":left"));
        assertThat(abnormal(read(FOLDER.resolve("postmistress.yaml"))))
                .contains("ankle-relaxation:right", "ankle-relaxation:left", "pulse-rate");
        assertThat(abnormal(read(FOLDER.resolve("ferryman.yaml"))))
                .contains("neck-vein-height", "abdominojugular-test");
        assertThat(abnormal(read(FOLDER.resolve("miller.yaml"))))
                .contains("plantar-response:right", "finger-extension:right", "knee-reflex:right")
                // A tap on the sound side that draws the weak thigh in is a sign of the weak side.
                .noneMatch(item ->
                        item.startsWith("pin") || (item.contains(":left") && !item.startsWith("crossed-adductor")));
    }

    @Test
    void theOldSciaticaIsToldFromTheNewRoot() {
        List<Sign> signs = REFERENCE
                .signs()
                .examine(read(FOLDER.resolve("gardener.yaml")).body(REFERENCE))
                .stream()
                .filter(s -> s.item().manoeuvre().equals("ankle-reflex"))
                .toList();

        assertThat(signs).extracting(s -> s.meaning().term()).containsExactly("reflex-arc-root", "old-nothing-new");
    }

    record Example(String yaml, List<String> problems) {}

    static Stream<Example> examples() throws IOException {
        Matcher matcher = EXAMPLE.matcher(Files.readString(FOLDER.resolve("README.md")));
        return matcher
                .results()
                .map(r -> new Example(
                        r.group(1),
                        r.group(2) == null ? List.of() : r.group(2).lines().toList()))
                .collect(Collectors.toList())
                .stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleOfTheDocumentationDoesWhatItSays(Example example) {
        assertThat(CaseFile.read(example.yaml(), "example.yaml", REFERENCE).problems().stream()
                        .map(Problem::toString))
                .containsExactlyElementsOf(example.problems());
    }

    @Test
    void theDocumentationHasExamples() throws IOException {
        assertThat(examples()).hasSize(8);
    }
}
