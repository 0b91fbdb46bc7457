package org.manubrium.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.marking.MarkSheet.Harm;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.HarmRule;

/** Each harm is a flag of its own. What is safe is common practice (no source) but for consent and chaperone. */
class HarmsTest {
    private static final Item CAROTID = new Item("carotid", Side.RIGHT, "");
    private static final Item NECK_BEND = new Item("neck-bend", Side.NONE, "");
    private static final Item PRESSURE = new Item("pressure-standing", Side.NONE, "");
    private static final Item TOE = new Item("toe", Side.RIGHT, "");
    private static final List<String> UPRIGHT = List.of("standing", "walking");

    private static final CompiledKey KEY = TinyKey.of(Side.LEFT)
            .withHarms(List.of(
                    rule("consent", "touch", List.of(), List.of(), List.of(), "consent"),
                    rule("carotids", "choice", List.of("carotid"), List.of(), List.of("both"), ""),
                    rule("neck-unasked", "handle", List.of("neck-bend"), List.of(), List.of(), "neck-injury"),
                    rule("neck", "unsafe", List.of("neck-bend"), List.of(), List.of(), ""),
                    rule("stood", "move", List.of(), UPRIGHT, List.of(), "faints"),
                    rule("alone", "move", List.of(), UPRIGHT, List.of(), "help"),
                    rule("went-on", "symptoms", List.of("pressure-standing"), UPRIGHT, List.of(), "")));

    private static HarmRule rule(
            String id, String before, List<String> about, List<String> in, List<String> choices, String question) {
        return new HarmRule(id, before, "", about, in, choices, question, id + " happened.", TinyKey.SEEN);
    }

    private static List<String> harms(Event... events) {
        return Marker.mark(KEY, "oak", TinyKey.WEIGHTS, Student.logged(List.of(events))).harms().stream()
                .map(Harm::id)
                .toList();
    }

    private static Event asked(String question) {
        return new Event.Asked(question);
    }

    private static Event moved(String position) {
        return new Event.Moved(position);
    }

    private static Event probed(Item item) {
        return new Event.Probed(item, Map.of());
    }

    @Test
    void bothCarotidsAtOnceIsHarmAndOneAfterTheOtherIsNot() {
        Event both = new Event.Probed(CAROTID, Map.of("hands", "both"));
        Event one = new Event.Probed(CAROTID, Map.of("hands", "one"));
        Event other = new Event.Probed(CAROTID.mirrored(), Map.of("hands", "one"));

        assertThat(harms(asked("consent"), both)).containsExactly("carotids");
        assertThat(harms(asked("consent"), one, other)).isEmpty();
    }

    @Test
    void movingTheNeckWithoutAskingIsHarmAndMovingAnInjuredOneAlways() {
        assertThat(harms(asked("consent"), probed(NECK_BEND))).containsExactly("neck-unasked", "neck");
        assertThat(harms(asked("consent"), asked("neck-injury"), probed(NECK_BEND)))
                .containsExactly("neck");
    }

    @Test
    void standingWantsAQuestionAndHelpAtHandAndEachIsAFlagOfItsOwn() {
        assertThat(harms(moved("standing"))).containsExactly("stood", "alone");
        assertThat(harms(asked("faints"), moved("standing"))).containsExactly("alone");
        assertThat(harms(asked("help"), moved("walking"))).containsExactly("stood");
        assertThat(harms(asked("faints"), asked("help"), moved("standing"))).isEmpty();
    }

    @Test
    void askingAfterwardsIsTooLate() {
        assertThat(harms(moved("standing"), asked("faints"), asked("help"))).containsExactly("stood", "alone");
    }

    @Test
    void examiningOnUprightAfterThePatientFeltFaintIsHarmAndLayingDownIsNot() {
        List<Event> up = List.of(asked("consent"), asked("faints"), asked("help"), moved("standing"), probed(PRESSURE));

        assertThat(harms(with(up, probed(TOE)))).containsExactly("went-on");
        assertThat(harms(with(up, moved("walking"), probed(TOE)))).containsExactly("went-on");
        assertThat(harms(with(up, moved("lying"), probed(TOE)))).isEmpty();
        assertThat(harms(with(up, moved("lying"), moved("standing"), probed(TOE))))
                .isEmpty();
        assertThat(harms(with(up))).isEmpty();
    }

    @Test
    void harmTakesNothingOffTheMark() {
        List<Event> perfect = Student.perfect(Side.LEFT).events;
        double careful = Marker.mark(KEY, "oak", TinyKey.WEIGHTS, Student.logged(perfect))
                .total();
        double careless = Marker.mark(
                        KEY, "oak", TinyKey.WEIGHTS, Student.logged(List.of(with(perfect, moved("standing")))))
                .total();

        assertThat(careless).isEqualTo(careful);
    }

    private static Event[] with(List<Event> first, Event... then) {
        return java.util.stream.Stream.concat(first.stream(), java.util.Arrays.stream(then))
                .toArray(Event[]::new);
    }
}
