package org.manubrium.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.marking.MarkSheet.Handled;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Soreness;

/** Ask where it hurts before a hand is laid on, and come to the painful place last: common practice, no source. */
class OrderTest {
    private static final Item SORE = new Item("press", Side.RIGHT, "lower");
    private static final Item SOUND = new Item("press", Side.LEFT, "lower");
    private static final Item MIDDLE = new Item("press-middle", Side.NONE, "navel");
    private static final CompiledKey KEY = TinyKey.of(Side.LEFT)
            .withSore(List.of(new Soreness("light palpation", List.of("press", "press-middle"), List.of(SORE))));
    private static final Event ASKED = new Event.Asked("pain");

    private static MarkSheet sheet(CompiledKey key, Event... events) {
        return Marker.mark(key, "oak", TinyKey.WEIGHTS, Student.logged(List.of(events)));
    }

    private static Map<String, Boolean> handled(Event... events) {
        return sheet(KEY, events).handling().stream().collect(Collectors.toMap(Handled::id, Handled::well));
    }

    private static Event press(Item item) {
        return new Event.Probed(item, Map.of());
    }

    @Test
    void askingFirstAndComingToWhatHurtsLastIsWellHandled() {
        assertThat(handled(ASKED, press(SOUND), press(MIDDLE), press(SORE)))
                .isEqualTo(Map.of("asked/press", true, "last/press", true));
    }

    @Test
    void pressingWhatHurtsFirstWithoutAskingLosesBoth() {
        assertThat(handled(press(SORE), ASKED, press(SOUND)))
                .isEqualTo(Map.of("asked/press", false, "last/press", false));
    }

    @Test
    void askingDoesNotMakeUpForComingToItEarly() {
        assertThat(handled(ASKED, press(SOUND), press(SORE), press(MIDDLE)))
                .isEqualTo(Map.of("asked/press", true, "last/press", false));
    }

    @Test
    void repeatingASoundPlaceAfterwardsIsNoFault() {
        assertThat(handled(ASKED, press(SOUND), press(SORE), press(SOUND))).containsEntry("last/press", true);
    }

    @Test
    void whoNeverTouchesWhatHurtsIsNotJudgedAndWhoTouchesNothingElseHasNoOrder() {
        assertThat(handled(press(SOUND), press(MIDDLE))).isEmpty();
        assertThat(handled(ASKED, press(SORE))).isEqualTo(Map.of("asked/press", true));
    }

    @Test
    void handlingIsBesideTheMarkAndEachLineSaysWhy() {
        MarkSheet rough = sheet(KEY, press(SORE), press(SOUND));

        assertThat(rough.total()).isEqualTo(sheet(KEY).total());
        assertThat(rough.handling()).allSatisfy(one -> assertThat(one.why()).isNotBlank());
    }

    @Test
    void mirroredPatientsAreJudgedAlike() {
        CompiledKey mirrored = TinyKey.of(Side.RIGHT)
                .withSore(List.of(
                        new Soreness("light palpation", List.of("press", "press-middle"), List.of(SORE.mirrored()))));
        Event[] events = {press(SORE), ASKED, press(SOUND)};
        Event[] other =
                Stream.of(SORE, SOUND).map(item -> press(item.mirrored())).toArray(Event[]::new);

        assertThat(sheet(mirrored, other[0], ASKED, other[1]).handling())
                .isEqualTo(sheet(KEY, events).handling());
    }
}
