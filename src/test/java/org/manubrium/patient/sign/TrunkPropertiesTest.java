package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Item;
import org.manubrium.examination.Level;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Sign;
import org.manubrium.patient.Variation;

/** What holds for every belly, neck and back, whatever ails it. */
class TrunkPropertiesTest extends SystemProperties {
    /** How the ids of what the trunk reads begin, or end. */
    private static final Pattern OF_THE_TRUNK =
            Pattern.compile("(belly|bowel|liver|spleen|portal|lower-cava|artery|kidney"
                    + "|psoas|hernia|aorta|bladder|gallbladder|rectum|node|thyroid|neck|carotid|spine|back|sacroiliac|oedema"
                    + "|right-atrial|tricuspid|caval).*|.*trapped");

    TrunkPropertiesTest() {
        super("abdomen", "neck", "back");
    }

    @Override
    boolean shows(Condition condition) {
        return condition.effects().stream()
                .anyMatch(effect -> effect.site().contains("root")
                        || effect.site().contains("cauda equina")
                        || OF_THE_TRUNK.matcher(effect.quantity()).matches());
    }

    /** In full and by half. */
    @Override
    List<Double> severities() {
        return List.of(0.5, 1.0);
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 40, 60, 80, 95})
    void healthyPeopleAreNormal(int age) {
        for (int seed = 0; seed < 30; seed++) {
            for (Sign sign : signs(Bedside.person(age, Variation.of(seed)))) {
                assertThat(sign.normal()).as("seed %d: %s", seed, sign).contains(true);
                assertThat(sign.meaning().term()).isEqualTo("nothing-abnormal");
            }
        }
    }

    /** Each level of each scale that a condition can show is shown by one, so that no level is there for nothing. */
    @Test
    void everyAbnormalLevelOfAGradedSignIsShownBySomePatient() {
        Map<String, List<String>> seen = new HashMap<>();
        for (Bedside patient : patients(0, Side.RIGHT)) {
            for (Sign sign : signs(patient)) {
                String scale = Bedside.manoeuvre(sign.item().manoeuvre()).scale();
                seen.computeIfAbsent(scale, s -> new ArrayList<>())
                        .add(sign.reading().toString());
            }
        }
        List<String> never = new ArrayList<>();
        for (Item item : items()) {
            String scale = Bedside.manoeuvre(item.manoeuvre()).scale();
            if (!scale.isEmpty()) {
                Bedside.REFERENCE.examination().scale(scale).levels().stream()
                        .map(Level::code)
                        .filter(code ->
                                seen.getOrDefault(scale, List.of()).stream().noneMatch(r -> r.contains("=" + code)))
                        .map(code -> scale + " " + code)
                        .forEach(never::add);
            }
        }
        assertThat(never.stream().distinct()).containsExactlyInAnyOrderElementsOf(DISTRACTORS);
    }

    /** Levels that students may choose, which no shipped condition on the right shows in a person of average build. */
    private static final List<String> DISTRACTORS = List.of(
            "belly-shape hollow",
            "kidney lower-end",
            "belly-scars left-upper",
            "belly-scars left-lower",
            "belly-scars left-middle",
            "belly-scars several",
            "rectum-finger soft-stool",
            "neck-swallow stays",
            "spine-look bows-left",
            "leg-raise-pain back-only");

    /** Neither the patient nor a label says a word that is to be read. */
    @Test
    void noCodeOfTheScaleIsShown() {
        for (Bedside patient : patients(7, Side.LEFT)) {
            for (Item item : items()) {
                String scale = Bedside.manoeuvre(item.manoeuvre()).scale();
                if (!scale.isEmpty()) {
                    Appearance shown = patient.show(item.toString(), Map.of());
                    String text = (shown.words() + " " + shown.measures()).toLowerCase(Locale.ROOT);
                    Bedside.REFERENCE.examination().scale(scale).levels().stream()
                            .map(Level::code)
                            .forEach(code -> assertThat(text.split("[^a-z-]+"))
                                    .as("%s", item)
                                    .doesNotContain(code));
                }
            }
        }
    }
}
