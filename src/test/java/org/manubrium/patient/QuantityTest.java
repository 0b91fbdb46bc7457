package org.manubrium.patient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;

class QuantityTest {
    private static final Physiology PHYSIOLOGY = new Physiology(
            List.of(amount("lung.right.apex.solid"), amount("lung.right.base.solid"), amount("warmth")),
            List.of(
                    new QuantityPart("lung.right.lobe", "lung.right.apex", 1, "argument", "design-value"),
                    new QuantityPart("lung.right.lobe", "lung.right.base", 0.5, "argument", "design-value")),
            List.of(),
            List.of(),
            List.of(),
            List.of());

    private static Quantity amount(String id) {
        return new Quantity(id, id, "", 0, 0, 0, 1, "argument", "design-value");
    }

    @Test
    void aWholeStandsForItsPartsInTheirShares() {
        assertThat(PHYSIOLOGY.parts("lung.right.lobe.solid"))
                .isEqualTo(Map.of("lung.right.apex.solid", 1.0, "lung.right.base.solid", 0.5));
    }

    @Test
    void aQuantityStandsForItself() {
        assertThat(PHYSIOLOGY.parts("warmth")).isEqualTo(Map.of("warmth", 1.0));
    }

    @Test
    void whatIsNeitherQuantityNorWholeIsRefusedByName() {
        assertThatThrownBy(() -> PHYSIOLOGY.parts("lung.left.lobe.solid")).hasMessageContaining("lung.left.lobe.solid");
        assertThatThrownBy(() -> PHYSIOLOGY.parts("cold")).hasMessageContaining("cold");
    }

    @Test
    void theFamilyLeavesOutWhere() {
        assertThat(Quantity.family("lung.right.lower-back.solid")).isEqualTo("lung.solid");
        assertThat(Quantity.family("lung.solid")).isEqualTo("lung.solid");
        assertThat(Quantity.family("warmth")).isEqualTo("warmth");
    }

    @Test
    void mirroringAnAilmentMovesItsQuantitiesToTheOtherSide() {
        Ailment ailment = new Ailment("x", false, List.of(), Map.of("lung.right.apex.solid", 0.7, "warmth", 1.0));

        assertThat(ailment.mirrored().shifts()).isEqualTo(Map.of("lung.left.apex.solid", 0.7, "warmth", 1.0));
    }

    @Test
    void aSideIsReadFromTheId() {
        assertThat(amount("lung.left.apex.solid").side()).isEqualTo(Side.LEFT);
        assertThat(amount("warmth").side()).isEqualTo(Side.NONE);
    }
}
