package org.manubrium.reasoning.weigh;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Onset;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Variation;
import org.manubrium.reasoning.weigh.Calibration.State;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** Of whom a published ratio speaks: who has the state that it was found in. */
class CalibratingTest {
    private static final Reference REFERENCE = Tables.shipped();
    private static final State ROOT = new State(List.of("root"), "L5", false, "");
    private static final State BOTH = new State(List.of("optic nerve"), "", true, "");
    private static final State FLUID = new State(List.of(), "", false, "lung.fluid");

    private static Ailment lesion(boolean old, double loss, String... sites) {
        Onset onset = Onset.parse("6 weeks").orElseThrow();
        List<Lesion> lesions = List.of(sites).stream()
                .flatMap(site -> REFERENCE.anatomy().lesions(site, loss, onset).stream())
                .toList();
        return new Ailment("it", old, lesions, Map.of());
    }

    private static Body body(Ailment... ailments) {
        return new Body(
                REFERENCE.anatomy(),
                REFERENCE.physiology(),
                new Person(47, Sex.FEMALE, Variation.AVERAGE),
                List.of(ailments));
    }

    @Test
    void theNamedPartHasToBeHurtAndNotOnlyTouched() {
        assertThat(Calibrating.has(body(lesion(false, 0.9, "root L5 left")), ROOT))
                .isTrue();
        assertThat(Calibrating.has(body(lesion(false, 0.9, "root S1 left")), ROOT))
                .isFalse();
        assertThat(Calibrating.has(body(lesion(false, 0.02, "root L5 left")), ROOT))
                .isFalse();
        assertThat(Calibrating.has(body(), ROOT)).isFalse();
    }

    @Test
    void whatIsLongOverIsNotWhatWasStudied() {
        assertThat(Calibrating.has(body(lesion(true, 0.9, "root L5 left")), ROOT))
                .isFalse();
    }

    @Test
    void aStateOfBothSidesWantsBoth() {
        assertThat(Calibrating.has(body(lesion(false, 0.9, "optic nerve left")), BOTH))
                .isFalse();
        assertThat(Calibrating.has(body(lesion(false, 0.9, "optic nerve left", "optic nerve right")), BOTH))
                .isTrue();
    }

    @Test
    void aQuantityCountsWhereThereIsMoreOfIt() {
        assertThat(Calibrating.has(body(shifted("lung.left.lower-back.fluid", 0.6)), FLUID))
                .isTrue();
        assertThat(Calibrating.has(body(shifted("lung.left.lower-back.fluid", -0.6)), FLUID))
                .isFalse();
        assertThat(Calibrating.has(body(shifted("lung.left.lower-back.solid", 0.6)), FLUID))
                .isFalse();
    }

    private static Ailment shifted(String quantity, double by) {
        return new Ailment("it", false, List.of(), Map.of(quantity, by));
    }
}
