package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Sign;
import org.manubrium.patient.Variation;

/** What must hold of the signs of any systems, whatever ails the patient. */
abstract class SystemProperties {
    private final List<String> systems;

    SystemProperties(String... systems) {
        this.systems = List.of(systems);
    }

    /** Somebody in health. */
    Bedside person(long seed) {
        return Bedside.person(50, Variation.of(seed));
    }

    /** Whether a condition can show in these systems. */
    boolean shows(Condition condition) {
        return true;
    }

    List<Double> severities() {
        return List.of(1.0);
    }

    final List<Sign> signs(Bedside patient) {
        List<Sign> found = new ArrayList<>();
        systems.forEach(system -> found.addAll(patient.system(system)));
        return found;
    }

    final List<Item> items() {
        List<Item> found = new ArrayList<>();
        systems.forEach(system -> found.addAll(Bedside.items(system)));
        return found;
    }

    /** Every condition that can show here, on the side named and at each of its levels. */
    final List<Bedside> patients(long seed, Side side) {
        Bedside person = person(seed);
        List<Bedside> found = new ArrayList<>();
        for (Condition condition : Bedside.REFERENCE.conditions().all()) {
            if (shows(condition)) {
                found.addAll(patients(person, condition, condition.sided() ? side : Side.NONE));
            }
        }
        return found;
    }

    private List<Bedside> patients(Bedside person, Condition condition, Side side) {
        List<Optional<String>> levels = condition.levels().isEmpty()
                ? List.of(Optional.empty())
                : condition.levels().stream().map(Optional::of).toList();
        return levels.stream()
                .flatMap(level -> severities().stream()
                        .map(severity -> person.ailing(Bedside.REFERENCE
                                .conditions()
                                .ailment(condition, side, level, severity, Optional.empty()))))
                .toList();
    }

    @Test
    void mirroringThePatientMirrorsEverySign() {
        for (Bedside patient : patients(17, Side.RIGHT)) {
            Bedside mirrored = patient.mirrored();
            for (Sign sign : signs(patient)) {
                String seen = mirrored.sign(sign.item().mirrored().toString())
                        .reading()
                        .toString();
                assertThat(seen)
                        .as("%s %s", patient.body().ailments(), sign.item())
                        .isEqualTo(swapped(sign.reading().toString()));
            }
        }
    }

    private static String swapped(String reading) {
        return reading.replaceAll("\\bright\\b", "\0")
                .replaceAll("\\bleft\\b", "right")
                .replace("\0", "left");
    }

    @Test
    void everyAbnormalSignIsExplained() {
        for (Bedside patient : patients(3, Side.LEFT)) {
            assertThat(signs(patient))
                    .filteredOn(sign -> !sign.normal().orElseThrow())
                    .allSatisfy(sign -> {
                        assertThat(sign.meaning().term()).as("%s", sign).isNotEqualTo("unexplained");
                        assertThat(sign.meaning().ailments()).as("%s", sign).isNotEmpty();
                    });
        }
    }
}
