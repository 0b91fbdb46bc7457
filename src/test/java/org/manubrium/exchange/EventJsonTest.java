package org.manubrium.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Reading;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;

class EventJsonTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{'key':'a','type':'moved','position':'kneeling'}",
                "{'key':'a','type':'asked','question':'consent'}",
                "{'key':'a','type':'probed','manoeuvre':'triceps-reflex','side':'left','place':'','technique':{'reinforcement':'none'}}",
                "{'key':'a','type':'recorded','manoeuvre':'triceps-reflex','side':'left','place':'','reading':{'grade':'1','scale':'ninds-reflex'}}",
                "{'key':'a','type':'recorded','manoeuvre':'neck-vein-height','side':'none','place':'','reading':{'value':4.5,'unit':'cm'}}",
                "{'key':'a','type':'recorded','manoeuvre':'plantar-response','side':'right','place':'','reading':{'seen':'extensor'}}",
                "{'key':'a','type':'answered','manoeuvre':'triceps-reflex','side':'left','place':'','question':'roots','answer':['C7']}",
                "{'key':'a','type':'answered','manoeuvre':'','side':'none','place':'','question':'differential','answer':['x=70','y=30']}",
                "{'key':'a','type':'deferred','manoeuvre':'rectum-finger','side':'none','place':'','reason':'no-chaperone'}",
                "{'key':'a','type':'handed-in'}"
            })
    void everyKindOfEventReadsBackAsItWasWritten(String json) {
        String text = json.replace('\'', '"');

        assertThat(EventJson.write(EventJson.read(text))).isEqualTo(text);
    }

    @Test
    void sideAndPlaceAndTechniqueMayBeLeftOut() {
        Logged.Keyed read = EventJson.read("{\"key\":\"a\",\"type\":\"probed\",\"manoeuvre\":\"pulse\"}");

        assertThat(read.event()).isEqualTo(new Event.Probed(new Item("pulse", Side.NONE, ""), Map.of()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{'type':'handed-in'} | key: expected text, found nothing",
                "{'key':' ','type':'handed-in'} | key: expected text that is not blank, found \" \"",
                "{'key':'a','type':'slept'} | type: expected one of moved, asked, probed, deferred, recorded, answered, handed-in, found \"slept\"",
                "{'key':'a','type':'moved'} | position: expected text, found nothing",
                "{'key':'a','type':'moved','position':4} | position: expected text, found 4",
                "{'key':'a','type':'moved','position':'prone','speed':3} | speed: expected no such field; the fields are key, position, type, found it",
                "{'key':'a','type':'probed','manoeuvre':'x','side':'sinister'} | side: expected right, left or none, found \"sinister\"",
                "{'key':'a','type':'probed','manoeuvre':'x','technique':{'a':1}} | technique.a: expected text, found 1",
                "{'key':'a','type':'recorded','manoeuvre':'x','reading':{'grade':'1'}} | reading.scale: expected text, found nothing",
                "{'key':'a','type':'recorded','manoeuvre':'x','reading':{'value':'4','unit':'cm'}} | reading.value: expected a number, found \"4\"",
                "{'key':'a','type':'recorded','manoeuvre':'x','reading':{'seen':'x','value':1}} | reading.value: expected no such field; the fields are seen, found it",
                "{'key':'a','type':'recorded','manoeuvre':'x'} | reading: expected an object, found nothing",
                "{'key':'a','type':'answered','question':'why','answer':[]} | question: expected one of differential, expect, means, next, normal, roots, site, summary, found \"why\"",
                "{'key':'a','type':'answered','question':'roots','answer':'C7'} | answer: expected a list of text, found \"C7\"",
                "{'key':'a','type':'answered','question':'roots','answer':[7]} | answer: expected a list of text, found a list with 7",
                "[] | event: expected an object, found []"
            })
    void aFaultNamesTheFieldAndWhatWasExpected(String json, String message) {
        assertThatThrownBy(() -> EventJson.read(json.replace('\'', '"')))
                .isInstanceOf(BadRecord.class)
                .hasMessage(message);
    }

    @Test
    void brokenJsonSaysWhere() {
        assertThatThrownBy(() -> EventJson.read("{\"key\":\n oops}"))
                .isInstanceOf(BadRecord.class)
                .hasMessageStartingWith("event: expected JSON, found a fault at line 2");
    }

    @Test
    void sizesAreBounded() {
        String list = String.join(",", Collections.nCopies(41, "\"C7\""));
        String answered = "{\"key\":\"a\",\"type\":\"answered\",\"question\":\"roots\",\"answer\":[";

        assertThatThrownBy(() -> EventJson.read(answered + list + "]}"))
                .hasMessage("answer: expected at most 40 entries, found 41 entries");
        assertThatThrownBy(() -> EventJson.read(answered + "\"" + "x".repeat(2001) + "\"]}"))
                .hasMessage("answer: expected at most 2000 characters, found 2001 characters");
        assertThatThrownBy(() -> EventJson.read("{\"key\":\"" + "k".repeat(65) + "\",\"type\":\"handed-in\"}"))
                .hasMessageStartingWith("key: expected at most 64 characters");
    }

    @Test
    void anAttemptFileMayLeaveKeysOutAndNamesTheEventAtFault() throws Exception {
        ObjectMapper json = new ObjectMapper();
        List<Logged.Keyed> read = EventJson.readAttempt(
                json.readTree("{\"events\":[{\"type\":\"asked\",\"question\":\"consent\"},{\"type\":\"handed-in\"}]}"));

        assertThat(read)
                .extracting(Logged.Keyed::event)
                .containsExactly(new Event.Asked("consent"), new Event.HandedIn());
        assertThatThrownBy(
                        () -> EventJson.readAttempt(json.readTree("[{\"type\":\"handed-in\"},{\"type\":\"moved\"}]")))
                .hasMessage("event 2, position: expected text, found nothing");
        assertThatThrownBy(() -> EventJson.readAttempt(json.readTree("7")))
                .hasMessage("attempt: expected a list of events, found NUMBER");
    }

    @Test
    void aRepeatedKeyAndWhatFollowsTheHandInAddNothing() {
        Event.Recorded reading = new Event.Recorded(new Item("x", Side.NONE, ""), new Reading.Seen("y"));
        List<Logged> taken = Logged.inOrder(
                List.of(
                        new Logged.Keyed("a", new Event.Moved("prone")),
                        new Logged.Keyed("a", new Event.Moved("standing")),
                        new Logged.Keyed("b", reading),
                        new Logged.Keyed("c", new Event.HandedIn()),
                        new Logged.Keyed("d", reading)),
                "lying-45");

        assertThat(taken).extracting(Logged::clientKey).containsExactly("a", "b", "c");
        assertThat(taken).extracting(Logged::position).containsExactly("lying-45", "prone", "prone");
        assertThat(taken).extracting(Logged::seq).containsExactly(1, 2, 3);
    }
}
