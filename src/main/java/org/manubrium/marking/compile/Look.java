package org.manubrium.marking.compile;

import java.util.Map;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.sign.Signs;

/** One body under examination. */
final class Look {
    private final Signs signs;
    private final Body body;

    Look(Signs signs, Body body) {
        this.signs = signs;
        this.body = body;
    }

    Finding usual(Manoeuvre manoeuvre, Item item) {
        return signs.finding(body, Signs.usual(manoeuvre, item));
    }

    Finding with(Item item, String position, Map<String, String> technique) {
        return signs.finding(body, new Probe(item, position, technique));
    }

    /** Whether two findings would be written down differently. */
    static boolean differ(Signs signs, Manoeuvre manoeuvre, Finding a, Finding b) {
        if (a instanceof Finding.Measured one && b instanceof Finding.Measured other) {
            return Math.abs(one.value() - other.value()) > manoeuvre.tolerance();
        }
        return !signs.reading(manoeuvre, a).equals(signs.reading(manoeuvre, b));
    }
}
