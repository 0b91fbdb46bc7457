package org.manubrium.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Onset;
import org.manubrium.patient.Condition;

/** What every condition must hold, and that none is another under a second name. */
class ConditionsCompleteTest {
    private static final List<Condition> ALL =
            List.copyOf(Tables.shipped().conditions().all());

    @Test
    void everyConditionHasAPriorAHistoryAnOnsetASourceAndARangeOfSeverity() {
        for (Condition condition : ALL) {
            assertThat(condition.prior()).as(condition.id()).isBetween(1.0, 10.0);
            assertThat(condition.history()).as(condition.id()).matches("(?s)[A-Z].{7,}[.!?]");
            assertThat(Onset.parse(condition.onset())).as(condition.id()).isPresent();
            assertThat(condition.source()).as(condition.id()).isNotBlank();
            assertThat(condition.leastSeverity()).as(condition.id()).isBetween(0.0, 1.0);
        }
        assertThat(ALL).filteredOn(c -> c.leastSeverity() > 0).hasSizeGreaterThan(15);
    }

    @Test
    void onlyHealthTakesNothing() {
        assertThat(ALL)
                .filteredOn(c -> c.effects().isEmpty())
                .extracting(Condition::id)
                .containsExactly("healthy");
    }

    private record Taken(boolean sided, Set<String> levels, String onset, List<String> effects) {}

    private static Taken taken(Condition condition) {
        List<String> effects = condition.effects().stream()
                .sorted(Comparator.comparing(e -> e.site() + e.quantity()))
                .map(e -> e.site() + e.quantity() + " " + e.amount())
                .collect(Collectors.toList());
        return new Taken(condition.sided(), new HashSet<>(condition.levels()), condition.onset(), effects);
    }

    @Test
    void noTwoConditionsAreTheSameInTheSameTime() {
        assertThat(ALL.stream().map(ConditionsCompleteTest::taken)).doesNotHaveDuplicates();
        assertThat(ALL.stream().map(Condition::name)).doesNotHaveDuplicates();
    }
}
