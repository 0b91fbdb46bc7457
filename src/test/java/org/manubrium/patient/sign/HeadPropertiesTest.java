package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.Site;
import org.manubrium.anatomy.TractStep;
import org.manubrium.examination.Item;
import org.manubrium.patient.Sign;
import org.manubrium.patient.Variation;

/** What holds for every head: eyes, ears, face, mouth and the other nerves of the skull. */
class HeadPropertiesTest extends SystemProperties {
    private static final List<String> OF_THE_BODY = List.of(
            "corticospinal",
            "other descending",
            "dorsal column",
            "spinothalamic",
            "steering",
            "trunk steering",
            "movement drive",
            "movement brake",
            "stepping",
            "balance",
            "attending to touch");

    HeadPropertiesTest() {
        super("eyes", "ears", "face", "mouth", "other cranial nerves");
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 45, 70, 90})
    void healthyPeopleAreNormal(int age) {
        for (int seed = 1; seed <= 60; seed++) {
            for (Sign sign : signs(Bedside.person(age, Variation.of(seed)))) {
                assertThat(sign.normal()).as("seed %d: %s", seed, sign).contains(true);
                assertThat(sign.meaning().term()).isEqualTo("nothing-abnormal");
            }
        }
    }

    /** The patient never says, and the hand never feels, a word that is to be read. */
    @Test
    void noWordOfTheScaleIsShown() {
        for (Bedside patient : patients(7, Side.LEFT)) {
            for (Item item : items()) {
                var manoeuvre = Bedside.manoeuvre(item.manoeuvre());
                String words = patient.show(item.toString(), Map.of()).words().toLowerCase(java.util.Locale.ROOT);
                if (!manoeuvre.scale().isEmpty() && !words.isEmpty()) {
                    Bedside.REFERENCE.examination().scale(manoeuvre.scale()).levels().stream()
                            .filter(level -> level.code().length() > 2)
                            .forEach(level -> assertThat(words).as("%s", item).doesNotContain(level.code()));
                }
            }
        }
    }

    /** A row that no sign notices is a row that is wrong or not needed. */
    @Test
    void everyStepOfEveryTractOfTheHeadIsFelt() {
        Bedside healthy = Bedside.healthy(50);
        Map<Item, String> before = readings(healthy);
        List<String> idle = Bedside.REFERENCE.anatomy().tables().tractSteps().stream()
                .filter(step -> !OF_THE_BODY.contains(step.tract()))
                .filter(step -> !step.structure().equals("root"))
                .filter(step ->
                        readings(healthy.lesion(where(step), 1, "3 months")).equals(before))
                .map(step -> step.tract() + ": " + where(step))
                .distinct()
                .toList();

        assertThat(idle).isEmpty();
    }

    private static String where(TractStep step) {
        var structure = Bedside.REFERENCE.anatomy().structure(step.structure());
        Optional<String> level = Optional.of(step.level()).filter(l -> !l.isBlank());
        Optional<Segment> segment = structure.segments() ? Optional.of(Segment.C8) : Optional.empty();
        Side side = structure.sided() ? Side.LEFT : Side.NONE;
        return new Site(step.structure(), segment, side, level).toString();
    }

    private Map<Item, String> readings(Bedside patient) {
        Map<Item, String> found = new HashMap<>();
        signs(patient).forEach(sign -> found.put(sign.item(), sign.finding().toString()));
        return found;
    }
}
