package org.manubrium.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.AnatomyTables;
import org.manubrium.anatomy.Station;
import org.manubrium.anatomy.TractStep;

/** The shipped anatomy against what the texts say each lesion takes and spares. */
class ShippedAnatomyTest {
    private static final AnatomyTables TABLES = new AnatomyRows(TableFiles.shipped()).read();
    private static final Anatomy ANATOMY = new Anatomy(TABLES);

    static Stream<Expectation> expectations() {
        return Stream.of("single-lesions.csv", "cord-and-brain-lesions.csv").flatMap(f -> Expectation.read(f).stream());
    }

    @ParameterizedTest
    @MethodSource("expectations")
    void everyLesionTakesAndSparesWhatTheTextsSay(Expectation expectation) {
        assertThat(expectation.failures(ANATOMY)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("expectations")
    void theOtherSideAnswersInTheMirror(Expectation expectation) {
        assertThat(expectation.mirrored().failures(ANATOMY)).isEmpty();
    }

    @Test
    void everyStretchOfNerveIsFelt() {
        List<String> idle = TABLES.stations().stream()
                .filter(s -> s.parent().isPresent())
                .filter(s -> !ENDS.contains(s.structure()))
                .filter(s -> unnoticed(withStations(bypassing(s))))
                .map(s -> s.id() + " without " + s.parent().orElseThrow())
                .toList();

        assertThat(idle).isEmpty();
    }

    /** The last stretch of fibres, which many-nerve diseases take; those have expectations of their own. */
    private static final Set<String> ENDS = Set.of("skin endings", "stretch fibres", "subscapular nerves");

    /** The tracts of the limbs and the skin; those of the head have expectations of their own. */
    private static final Set<String> LIMB_TRACTS =
            Set.of("corticospinal", "other descending", "dorsal column", "spinothalamic");

    @Test
    void everyStepOfATractIsFelt() {
        List<String> idle = TABLES.tractSteps().stream()
                .filter(step -> LIMB_TRACTS.contains(step.tract()))
                .filter(step -> unnoticed(withSteps(without(step))))
                .map(step -> step.tract() + " step " + step.step() + step.branch() + " " + step.structure())
                .toList();

        assertThat(idle).isEmpty();
    }

    /** Whether every expectation still holds in a body that was changed. */
    private static boolean unnoticed(AnatomyTables changed) {
        try {
            Anatomy anatomy = new Anatomy(changed);
            return expectations().allMatch(e -> e.failures(anatomy).isEmpty());
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static List<Station> bypassing(Station station) {
        Optional<String> grandparent = TABLES.stations().stream()
                .filter(s -> station.parent().equals(Optional.of(s.id())))
                .findFirst()
                .flatMap(Station::parent);
        return TABLES.stations().stream()
                .map(s -> s.equals(station)
                        ? new Station(s.id(), s.structure(), s.level(), grandparent, s.source(), s.confidence())
                        : s)
                .toList();
    }

    private static List<TractStep> without(TractStep step) {
        List<TractStep> kept = new ArrayList<>(TABLES.tractSteps());
        kept.remove(step);
        return kept;
    }

    private static AnatomyTables withStations(List<Station> stations) {
        return changed(TABLES.tractSteps(), stations);
    }

    private static AnatomyTables withSteps(List<TractStep> steps) {
        return changed(steps, TABLES.stations());
    }

    private static AnatomyTables changed(List<TractStep> steps, List<Station> stations) {
        return new AnatomyTables(
                TABLES.structures(),
                TABLES.regions(),
                TABLES.siteNames(),
                steps,
                stations,
                TABLES.trunks(),
                TABLES.rootShares(),
                TABLES.muscles(),
                TABLES.movements(),
                TABLES.arcs(),
                TABLES.points(),
                TABLES.limbPoints(),
                TABLES.modalities());
    }
}
