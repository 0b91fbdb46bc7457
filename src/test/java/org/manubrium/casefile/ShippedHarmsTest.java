package org.manubrium.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.manubrium.TestSchool;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.marking.MarkSheet.Harm;
import org.manubrium.marking.Marker;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.HarmRule;
import org.manubrium.school.mark.HandedIn;
import org.manubrium.tables.Reference;

/** Each rule about harm that is shipped fires in a patient it is about, and only it: common practice, no source. */
class ShippedHarmsTest {
    private static final Reference REFERENCE = TestSchool.REFERENCE;

    /** A patient who must not be moved at the neck and whose pressure falls on standing. */
    private static final CompiledKey KEY = HandedIn.KEY.withHarms(harms());

    private record Slip(String rule, List<Event> events) {}

    private static List<HarmRule> harms() {
        CaseFile file = CaseFile.read(
                        "patient: {age: 47, sex: female}\nquantities: {autonomic-gain: 0}\nunsafe: [neck-movement]\n",
                        "case",
                        REFERENCE)
                .caseFile()
                .orElseThrow();
        return new HarmsOfCase(REFERENCE.signs(), REFERENCE.marking().harms()).of(file.body(REFERENCE), file.unsafe());
    }

    private static Event asked(String question) {
        return new Event.Asked(question);
    }

    private static Event moved(String position) {
        return new Event.Moved(position);
    }

    private static Event probed(String manoeuvre, Side side, Map<String, String> technique) {
        return new Event.Probed(new Item(manoeuvre, side, ""), technique);
    }

    private static Event probed(String manoeuvre, Side side) {
        return probed(manoeuvre, side, Map.of());
    }

    static Stream<Slip> slips() {
        Event consent = asked("consent");
        Event reflex = probed("triceps-reflex", Side.LEFT);
        return Stream.of(
                new Slip("no-consent", List.of(reflex)),
                new Slip("no-chaperone", List.of(consent, probed("rectum-finger", Side.NONE))),
                new Slip("neck-moved", List.of(consent, asked("neck-injury"), probed("neck-turning", Side.LEFT))),
                new Slip("stood-unasked", List.of(asked("help"), moved("standing"))),
                new Slip("stood-alone", List.of(asked("faints"), moved("standing"))),
                new Slip(
                        "went-on",
                        List.of(
                                consent,
                                asked("faints"),
                                asked("help"),
                                moved("standing"),
                                probed("pressure-standing-1-minute", Side.NONE),
                                reflex)),
                new Slip(
                        "both-carotids",
                        List.of(consent, probed("carotid-beat", Side.LEFT, Map.of("carotid-hands", "both")))));
    }

    private static List<String> fired(CompiledKey key, List<Event> events) {
        List<Logged.Keyed> keyed = events.stream()
                .map(event -> new Logged.Keyed("k" + events.indexOf(event), event))
                .toList();
        return Marker.mark(key, "alder", REFERENCE.marking().weights(), Logged.inOrder(keyed, "lying-45"))
                .harms()
                .stream()
                .map(Harm::id)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("slips")
    void eachRuleFiresAlone(Slip slip) {
        assertThat(fired(KEY, slip.events())).containsExactly(slip.rule());
    }

    /** Where the neck must not be moved at all, asking first is a rule of its own. */
    @Test
    void movingTheNeckUnaskedFiresWhetherOrNotItIsHurt() {
        List<Event> events = List.of(asked("consent"), probed("neck-flexion", Side.NONE));

        assertThat(fired(KEY, events)).containsExactly("neck-moved-unasked", "neck-moved");
        assertThat(fired(HandedIn.KEY, events)).containsExactly("neck-moved-unasked");
    }

    @Test
    void everyShippedRuleIsTriedHere() {
        assertThat(Stream.concat(slips().map(Slip::rule), Stream.of("neck-moved-unasked"))
                        .collect(Collectors.toSet()))
                .containsExactlyInAnyOrderElementsOf(
                        REFERENCE.marking().harms().stream().map(HarmRule::id).toList());
    }

    @Test
    void theSignalmanWhoFellMustNotBeMovedAtTheNeck() throws java.io.IOException {
        String text = java.nio.file.Files.readString(java.nio.file.Path.of("cases", "signalman.yaml"));

        assertThat(CaseFile.read(text, "signalman", REFERENCE)
                        .caseFile()
                        .orElseThrow()
                        .unsafe())
                .containsExactly("neck-movement");
    }
}
