package org.manubrium.marking.compile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Onset;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.ReadingKind;
import org.manubrium.marking.compile.CaseTruth.EssentialChoice;
import org.manubrium.marking.compile.CaseTruth.Rival;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;
import org.manubrium.marking.key.SiteKey;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.tables.Reference;

/** What each maker of a part of a key puts into it and leaves out. */
class PartsOfKeysTest {
    private static final Reference TABLES = Shipped.REFERENCE;
    private static final Ailment SEVENTH = damage("root C7 left", false, 0.8);
    private static final Ailment OLD_FIRST_SACRAL = damage("root S1 left", true, 0.9);

    private static Ailment damage(String place, boolean old, double severity) {
        Onset onset = Onset.parse(old ? "6 years" : "6 weeks").orElseThrow();
        return new Ailment(place, old, TABLES.anatomy().lesions(place, severity, onset), Map.of());
    }

    private static CaseTruth truth(List<Ailment> ailments, Body... rivals) {
        Diagnosis it = new Diagnosis("it", "it", List.of());
        List<Rival> others = List.of(rivals).stream()
                .map(body -> new Rival(new Diagnosis("other", "other", List.of()), body))
                .toList();
        return new CaseTruth("parts", Shipped.body().with(ailments), List.of(it), others, List.of(), List.of());
    }

    private static List<String> rivals(CaseTruth truth) {
        return new Rivals(TABLES.signs(), TABLES.marking().conventions(), truth).names();
    }

    @Test
    void aNewIllnessIsAlsoToldFromTheSamePersonWithoutIt() {
        List<Ailment> both = List.of(OLD_FIRST_SACRAL, SEVENTH);

        assertThat(rivals(truth(both))).containsExactly("the same person without the new illness");
    }

    @Test
    void whereHealthIsAskedAboutItIsNotAddedAgain() {
        List<Ailment> seventh = List.of(SEVENTH);

        assertThat(rivals(truth(seventh, Shipped.body()))).containsExactly("other");
        assertThat(rivals(truth(seventh, Shipped.body().with(List.of(OLD_FIRST_SACRAL)))))
                .containsExactly("other");
        assertThat(rivals(truth(seventh, Shipped.body("root C6 left")))).hasSize(2);
    }

    @Test
    void whoHasNothingNewNeedsNoOneWithoutIt() {
        assertThat(rivals(truth(List.of()))).isEmpty();
        assertThat(rivals(truth(List.of(OLD_FIRST_SACRAL)))).isEmpty();
    }

    @Test
    void whatIsOldOrTakesNothingIsNoPlaceToFind() {
        List<Ailment> ailments = List.of(OLD_FIRST_SACRAL, SEVENTH, damage("root C5 right", false, 0));

        assertThat(new SiteKeys(TABLES.anatomy()).of(ailments, List.of(), List.of()))
                .extracting(SiteKey::place)
                .containsExactly("root C7 left");
    }

    @Test
    void damageOfAWholeRegionIsCalledByItsName() {
        assertThat(new SiteKeys(TABLES.anatomy())
                        .of(List.of(damage("lateral medulla left", false, 0.8)), List.of(), List.of()))
                .singleElement()
                .satisfies(site -> assertThat(site.place()).isEqualTo("lateral medulla left"))
                .satisfies(
                        site -> assertThat(site.steps("lateral medulla left")).hasValue(0))
                .satisfies(
                        site -> assertThat(site.steps("lateral medulla right")).isEmpty());
    }

    @Test
    void anEducatorsChoiceForAPlaceTouchesNoOtherPlace() {
        EssentialChoice thumb = new EssentialChoice("pin", "c6-thumb", true, "why");

        assertThat(thumb.touches("pin", "c6-thumb")).isTrue();
        assertThat(thumb.touches("pin", "c7-middle-finger")).isFalse();
        assertThat(thumb.touches("light-touch", "c6-thumb")).isFalse();
        assertThat(new EssentialChoice("pin", "", true, "why").touches("pin", "c7-middle-finger"))
                .isTrue();
    }

    @Test
    void numbersDifferOnlyBeyondWhatAnExaminerCanMeasure() {
        Manoeuvre measured = TABLES.signs().examination().manoeuvres().stream()
                .filter(row -> row.kind() == ReadingKind.MEASURED && row.tolerance() > 0)
                .findFirst()
                .orElseThrow();
        double least = measured.tolerance();

        assertThat(Look.differ(TABLES.signs(), measured, number(100), number(100 + 0.9 * least)))
                .isFalse();
        assertThat(Look.differ(TABLES.signs(), measured, number(100), number(100 - 0.9 * least)))
                .isFalse();
        assertThat(Look.differ(TABLES.signs(), measured, number(100), number(100 + 1.1 * least)))
                .isTrue();
        assertThat(Look.differ(TABLES.signs(), measured, number(100), number(100 - 1.1 * least)))
                .isTrue();
    }

    private static Finding number(double value) {
        return new Finding.Measured(value, "mm");
    }

    @Test
    void aScaleNobodyOpenedIsShownWithEveryLevelOfIt() {
        Unopened unopened = new Unopened(
                TABLES.signs().examination(),
                TABLES.conditions(),
                TABLES.signs().meanings().terms(),
                TABLES.marking().conventions());

        assertThat(unopened.facts())
                .filteredOn(fact -> fact.kind().equals("scale"))
                .isNotEmpty()
                .allSatisfy(fact -> TABLES.signs().examination().scales().stream()
                        .filter(scale -> scale.name().equals(fact.name()))
                        .forEach(scale -> scale.levels()
                                .forEach(level -> assertThat(fact.says()).contains(level.label()))));
    }
}
