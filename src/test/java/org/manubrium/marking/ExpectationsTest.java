package org.manubrium.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Expectation;
import org.manubrium.marking.key.Expectation.Expected;

class ExpectationsTest {
    private static final CompiledKey TINY = TinyKey.of(Side.LEFT);
    private static final CompiledKey KEY = TINY.with(TINY.conclusion()
            .expecting(List.of(
                    new Expectation("root", "a root, left", List.of(new Expected("ankle-reflex", "ankle reflex"))),
                    new Expectation("nerve", "a nerve, left", List.of(new Expected("toe", "toe"))))));

    private static Event expects(String... answer) {
        return new Event.Answered(Event.CONCLUSION, "expect", List.of(answer));
    }

    private static List<String> notes(CompiledKey key, Event... events) {
        return Marker.mark(key, "oak", TinyKey.WEIGHTS, Student.logged(List.of(events)))
                .notes();
    }

    @Test
    void eachExpectationStandsBesideTheModelAndBesideWhatWasThere() {
        assertThat(notes(KEY, expects("root=ankle-reflex;neck-vein", "nerve=ankle-reflex")))
                .satisfiesExactly(
                        root -> assertThat(root)
                                .contains("a root, left", "1 of 2 signs", "leave as it is: neck-vein")
                                .contains("this was there of what you expected: ankle reflex, neck-vein"),
                        nerve -> assertThat(nerve).contains("a nerve, left", "0 of 1 signs"));
    }

    @Test
    void whatIsSaidAfterTheFirstManoeuvreIsNoExpectation() {
        Event probe = new Event.Probed(Student.reflex(Side.LEFT), Map.of());

        assertThat(notes(KEY, probe, expects("root=ankle-reflex"))).isEmpty();
        assertThat(notes(KEY, expects("nerve=toe"), probe, expects("root=ankle-reflex")))
                .singleElement()
                .asString()
                .contains("a nerve, left");
    }

    @Test
    void onlyThreeSignsOfADiagnosisAreRead() {
        assertThat(notes(KEY, expects("root=a;b;c;ankle-reflex")))
                .singleElement()
                .asString()
                .contains("0 of 3");
    }

    @Test
    void caseThatDoesNotAskComparesNothing() {
        assertThat(notes(TINY, expects("root=ankle-reflex"))).isEmpty();
    }

    @Test
    void expectingAddsNothingToTheMark() {
        List<Event> perfect = Student.perfect(Side.LEFT).events;

        assertThat(Marker.mark(KEY, "oak", TinyKey.WEIGHTS, Student.logged(perfect))
                        .total())
                .isEqualTo(100);
    }
}
