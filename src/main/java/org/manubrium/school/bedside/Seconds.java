package org.manubrium.school.bedside;

import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Question;
import org.manubrium.marking.event.Event;

/** The simulated seconds that an event takes, from the tables. */
final class Seconds {
    private final Examination examination;

    Seconds(Examination examination) {
        this.examination = examination;
    }

    /** The clock after an event that began at this one. */
    BedsideTime after(BedsideTime before, Event event) {
        if (event instanceof Event.Moved moved) {
            int seconds = examination.secondsToMove(before.position(), moved.position());
            return new BedsideTime(before.bedside() + seconds, moved.position());
        }
        return new BedsideTime(before.bedside() + seconds(event), before.position());
    }

    private int seconds(Event event) {
        if (event instanceof Event.Asked asked) {
            return examination.question(asked.question()).map(Question::seconds).orElse(0);
        }
        if (event instanceof Event.Probed probed) {
            return examination
                    .manoeuvre(probed.item().manoeuvre())
                    .map(Manoeuvre::seconds)
                    .orElse(0);
        }
        return 0;
    }
}
