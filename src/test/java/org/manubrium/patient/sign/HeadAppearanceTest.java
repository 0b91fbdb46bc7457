package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.patient.Variation;

/** What is shown of a movement of the head agrees with what is read of it: nothing moves where none is read. */
class HeadAppearanceTest {
    private static final Bedside PERSON = Bedside.person(55, Variation.of(9));

    private static List<Bedside> patients() {
        List<Bedside> found = new ArrayList<>();
        for (var condition : Bedside.REFERENCE.conditions().all()) {
            for (double severity : List.of(0.3, 0.6, 0.9, 1.0)) {
                Side side = condition.sided() ? Side.LEFT : Side.NONE;
                found.add(PERSON.ailing(Bedside.REFERENCE
                        .conditions()
                        .ailment(
                                condition, side, condition.levels().stream().findFirst(), severity, Optional.empty())));
            }
        }
        return found;
    }

    private static List<Item> items(String reader) {
        return Bedside.REFERENCE.examination().manoeuvres().stream()
                .filter(manoeuvre -> manoeuvre.reader().equals(reader))
                .flatMap(manoeuvre -> Examination.items(manoeuvre).stream())
                .toList();
    }

    /** How far the side asked moves: the right is told first, and a tongue pushes out the other cheek. */
    private static double moved(Appearance shown, Item item) {
        boolean first = (item.side() == Side.RIGHT) != item.manoeuvre().equals("tongue-push");
        return shown.measures().get(first ? 0 : 1).amount();
    }

    @Test
    void aMovementThatIsReadAsNoneIsNotSeenAndOneReadAsFullIsSeenInFull() {
        List<String> read = new ArrayList<>();
        for (Bedside patient : patients()) {
            for (Item item : items("cranial-power")) {
                String grade = patient.word(item.toString());
                double seen = moved(patient.show(item.toString(), Map.of()), item);
                if (grade.equals("none")) {
                    assertThat(seen).as("%s", item).isZero();
                } else if (grade.equals("full") && !item.manoeuvre().equals("eye-closure")) {
                    assertThat(seen).as("%s", item).isEqualTo(moved(PERSON.show(item.toString(), Map.of()), item));
                }
                read.add(grade);
            }
        }
        assertThat(read).contains("none", "weak", "full");
    }

    @Test
    void whatIsReadAsNotMovingDoesNotMoveAndDoesNotLeaveTheMiddle() {
        List<String> read = new ArrayList<>();
        for (Bedside patient : patients()) {
            for (Item item : items("swerve")) {
                List<Appearance.Measure> seen =
                        patient.show(item.toString(), Map.of()).measures();
                String word = patient.word(item.toString());
                if (word.equals("no-movement")) {
                    assertThat(seen)
                            .filteredOn(measure -> !measure.label().endsWith("has sunk by"))
                            .as("%s", item)
                            .allMatch(measure -> measure.amount() == 0);
                } else if (word.startsWith("to-")) {
                    assertThat(Math.signum(seen.get(1).amount()))
                            .as("%s", item)
                            .isEqualTo(word.equals("to-right") ? 1 : -1);
                }
                read.add(word);
            }
        }
        assertThat(read).contains("no-movement", "to-left", "straight");
    }
}
