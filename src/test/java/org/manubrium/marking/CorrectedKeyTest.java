package org.manubrium.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.anatomy.Side;
import org.manubrium.marking.correction.BadCorrection;
import org.manubrium.marking.correction.CorrectedKey;
import org.manubrium.marking.correction.Correction;
import org.manubrium.marking.key.CompiledKey;

class CorrectedKeyTest {
    private static final CompiledKey KEY = TinyKey.of(Side.LEFT);

    private static CompiledKey corrected(String line, String to, String... conventions) {
        return CorrectedKey.of(KEY, new Correction(line, List.of(conventions), to));
    }

    private static MarkSheet.Line line(CompiledKey key, String convention, String id) {
        List<MarkSheet.Line> lines = Marker.mark(
                        key,
                        convention,
                        TinyKey.WEIGHTS,
                        Student.perfect(Side.LEFT).logged())
                .lines();
        return lines.stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void correctedRootsAreMarkedByUnderTheirConventionOnly() {
        CompiledKey after = corrected("roots/ankle-reflex", "S2 or S2-S3", "oak");

        assertThat(line(KEY, "oak", "roots/ankle-reflex").credit()).isEqualTo(1);
        assertThat(line(after, "oak", "roots/ankle-reflex").credit()).isZero();
        assertThat(line(after, "oak", "roots/ankle-reflex").key()).isEqualTo("S2 or S2-S3");
        assertThat(line(after, "elm", "roots/ankle-reflex")).isEqualTo(line(KEY, "elm", "roots/ankle-reflex"));
    }

    /** Roots that are alternatives are not roots that are all to be named: the best overlap counts. */
    @Test
    void eachAlternativeEarnsAll() {
        CompiledKey after = corrected("roots/ankle-reflex", "S2|S1", "oak");

        assertThat(line(after, "oak", "roots/ankle-reflex").credit()).isEqualTo(1);
    }

    @Test
    void manoeuvreThatIsNotNeededIsNotMarked() {
        CompiledKey after = corrected("essential/neck-vein", "not needed");

        assertThat(Marker.mark(after, "oak", TinyKey.WEIGHTS, List.of()).lines())
                .extracting(MarkSheet.Line::id)
                .noneMatch(id -> id.endsWith("/neck-vein"))
                .contains("essential/ankle-reflex:left");
    }

    @Test
    void correctedReadingIsMarkedBy() {
        CompiledKey after = corrected("reading/ankle-reflex:left", "1", "oak", "elm");

        assertThat(line(after, "oak", "reading/ankle-reflex:left").credit()).isEqualTo(0.5);
        assertThat(line(after, "oak", "reading/ankle-reflex:right").credit()).isEqualTo(1);
    }

    @Test
    void correctedConclusionIsMarkedBy() {
        assertThat(line(corrected("conclusion/next", "ct"), "oak", "conclusion/next")
                        .credit())
                .isZero();
        assertThat(line(corrected("conclusion/site", "root S2 left"), "oak", "conclusion/site")
                        .credit())
                .isEqualTo(1);
    }

    @Test
    void everyLineOfAnEmptyAttemptCanBeCorrectedToWhatItSays() {
        List<String> same = Marker.mark(KEY, "oak", TinyKey.WEIGHTS, List.of()).lines().stream()
                .filter(line -> line.id().startsWith("roots/") || line.id().startsWith("normal/"))
                .flatMap(line ->
                        Stream.of(corrected(line.id(), line.key(), "oak").equals(KEY) ? "" : line.id()))
                .toList();

        assertThat(same).isNotEmpty().containsOnly("");
    }

    @ParameterizedTest
    @CsvSource({
        "roots/ankle-reflex, some",
        "roots/ankle-reflex, ''",
        "roots/knee-reflex, L3",
        "reading/ankle-reflex:left, 9",
        "reading/neck-vein, high",
        "normal/neck-vein, perhaps",
        "essential/neck-vein, needed",
        "conclusion/next, ''",
        "conclusion/price, 3",
        "price, 3",
    })
    void whatNoKeyCouldHoldIsRefusedWithASentence(String line, String to) {
        assertThatThrownBy(() -> corrected(line, to, "oak"))
                .isInstanceOf(BadCorrection.class)
                .hasMessageMatching("[A-Z\"].*\\.");
    }
}
