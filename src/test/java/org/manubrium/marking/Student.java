package org.manubrium.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Reading;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;

/** What a student does at the {@link TinyKey}'s patient. */
final class Student {
    final List<Event> events = new ArrayList<>();

    static Item reflex(Side side) {
        return new Item("ankle-reflex", side, "");
    }

    static final Item NECK = new Item("neck-vein", Side.NONE, "");

    Student does(Event event) {
        events.add(event);
        return this;
    }

    Student probes(Item item) {
        return does(new Event.Probed(item, Map.of()));
    }

    Student grades(Item item, String grade) {
        return does(new Event.Recorded(item, new Reading.Grade(grade, "five")));
    }

    Student measures(Item item, double value, String unit) {
        return does(new Event.Recorded(item, new Reading.Amount(value, unit)));
    }

    Student sees(Item item, String code) {
        return does(new Event.Recorded(item, new Reading.Seen(code)));
    }

    Student answers(Item item, String question, String... answer) {
        return does(new Event.Answered(item, question, List.of(answer)));
    }

    /** Everything right under the convention oak. */
    static Student perfect(Side bad) {
        Student student = new Student().does(new Event.Asked("consent"));
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            Item item = reflex(side);
            student.probes(item).does(new Event.Probed(item, Map.of("reinforcement", "clench")));
            student.grades(item, side == bad ? "0" : "2").answers(item, "normal", side == bad ? "abnormal" : "normal");
            student.answers(item, "roots", "S1");
        }
        return student.answers(reflex(bad), "means", "arc-root")
                .answers(reflex(bad), "site", "root S1 " + bad.word())
                .probes(NECK)
                .measures(NECK, 4, "cm")
                .answers(NECK, "normal", "abnormal")
                .answers(Event.CONCLUSION, "site", "root S1 " + bad.word())
                .answers(Event.CONCLUSION, "differential", "root=70", "nerve=30")
                .answers(Event.CONCLUSION, "next", "mri");
    }

    List<Logged> logged() {
        return logged(events);
    }

    static List<Logged> logged(List<Event> events) {
        List<Logged.Keyed> keyed = new ArrayList<>();
        events.forEach(event -> keyed.add(new Logged.Keyed("k" + keyed.size(), event)));
        return Logged.inOrder(keyed, "kneeling");
    }

    MarkSheet marked(String convention) {
        return Marker.mark(TinyKey.of(Side.LEFT), convention, TinyKey.WEIGHTS, logged());
    }
}
