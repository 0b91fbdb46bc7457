package org.manubrium.marking.event;

import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Reading;

/** One thing a student did. */
public sealed interface Event {
    /** The word for this kind of event in files and on the wire. */
    String type();

    /** The patient was brought into another position. */
    record Moved(String position) implements Event {
        @Override
        public String type() {
            return "moved";
        }
    }

    /** Something was asked of the patient. */
    record Asked(String question) implements Event {
        @Override
        public String type() {
            return "asked";
        }
    }

    /** A manoeuvre was done; {@code technique} holds the choice made of each variant. */
    record Probed(Item item, Map<String, String> technique) implements Event {
        public Probed {
            technique = Map.copyOf(technique);
        }

        @Override
        public String type() {
            return "probed";
        }
    }

    /** An intimate manoeuvre was put off, and why: one of the tabled reasons. */
    record Deferred(Item item, String reason) implements Event {
        @Override
        public String type() {
            return "deferred";
        }
    }

    /** A reading was written down. */
    record Recorded(Item item, Reading reading) implements Event {
        @Override
        public String type() {
            return "recorded";
        }
    }

    /**
     * A question was answered; an empty answer takes back the one before.
     *
     * @param item what the question is about; {@link #CONCLUSION} for the questions at the end
     * @param question normal, roots, site or means; of the conclusion site, differential or next
     */
    record Answered(Item item, String question, List<String> answer) implements Event {
        public Answered {
            answer = List.copyOf(answer);
        }

        @Override
        public String type() {
            return "answered";
        }
    }

    /** The attempt was closed. */
    record HandedIn() implements Event {
        @Override
        public String type() {
            return "handed-in";
        }
    }

    /** What a question of the conclusion is about: no manoeuvre. */
    Item CONCLUSION = new Item("", Side.NONE, "");
}
