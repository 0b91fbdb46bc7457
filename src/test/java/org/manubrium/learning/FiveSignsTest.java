package org.manubrium.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FiveSignsTest {
    private static final double DAY = 86_400;
    private static final Set<String> FACTS = Stream.of("read", "roots", "tell", "where")
            .flatMap(kind -> IntStream.range(0, 10).mapToObj(i -> kind + ":" + i))
            .collect(Collectors.toSet());

    private final FiveSigns five = new FiveSigns(Forgetting.USUAL);

    @Test
    void newStudentIsAskedFiveDifferentThingsOfSeveralKinds() {
        List<String> chosen = five.choose(FACTS, List.of(), List.of(), 0, 3);

        assertThat(chosen).hasSize(5).doesNotHaveDuplicates();
        assertThat(chosen.stream().map(f -> f.substring(0, 4)).distinct()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(five.choose(FACTS, List.of(), List.of(), 0, 3)).isEqualTo(chosen);
    }

    @Test
    void noTwoNeighboursAreOfOneKind() {
        for (int seed = 0; seed < 200; seed++) {
            List<String> kinds = five.choose(FACTS, List.of(), List.of(), 0, seed).stream()
                    .map(fact -> fact.substring(0, fact.indexOf(':')))
                    .toList();
            for (int i = 1; i < kinds.size(); i++) {
                assertThat(kinds.get(i)).as("seed %s", seed).isNotEqualTo(kinds.get(i - 1));
            }
        }
    }

    @Test
    void whatWentWrongInAnExaminationComesFirst() {
        assertThat(five.choose(FACTS, List.of(), List.of("tell:3", "nothing:1", "roots:2"), 0, 1))
                .contains("tell:3", "roots:2")
                .doesNotContain("nothing:1");
    }

    @Test
    void whatIsLikelyForgottenComesBeforeWhatIsNewAndBeforeWhatIsFresh() {
        List<Met> met = List.of(new Met("read:1", 0, true), new Met("roots:1", 59 * DAY, true));

        List<String> chosen = five.choose(FACTS, met, List.of(), 60 * DAY, 5);

        assertThat(chosen).contains("read:1");
    }

    /** Three right answers long ago and a wrong one yesterday: less is known than after the same and a right one. */
    @Test
    void wrongAnswerBringsAFactBackSooner() {
        List<Met> before = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            before.add(new Met("read:1", i * DAY, true));
            before.add(new Met("read:2", i * DAY, true));
        }
        before.add(new Met("read:1", 9 * DAY, false));
        before.add(new Met("read:2", 9 * DAY, true));

        assertThat(five.choose(Set.of("read:1", "read:2"), before, List.of(), 10 * DAY, 1))
                .first()
                .isEqualTo("read:1");
    }

    @Test
    void missedDaysPileNothingUp() {
        List<Met> met = FACTS.stream().map(fact -> new Met(fact, 0, true)).toList();

        assertThat(five.choose(FACTS, met, List.copyOf(FACTS), 365 * DAY, 1)).hasSize(5);
    }
}
