package org.manubrium.patient.sign;

import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;

/** Where a body is examined: the act, its side and its place. */
record Spot(Examination examination, Body body, Manoeuvre manoeuvre, Probe probe) {

    Side side() {
        return probe.item().side();
    }

    String place() {
        return probe.item().place();
    }

    /** A quantity by its id, with "@side" and "@place" standing for those of the act. */
    double of(String id) {
        return body.quantity(id.replace("@side", side().word()).replace("@place", place()));
    }

    double constant(String name) {
        return body.physiology().constant(name.replace("@place", place()));
    }

    /** A whole thing of one person, -1..1. */
    double own(String trait) {
        return body.person().variation().of(trait);
    }

    /** The same act on the same person in health. */
    Spot healthy() {
        return new Spot(examination, body.healthy(), manoeuvre, probe);
    }

    Spot on(Side other) {
        return new Spot(
                examination,
                body,
                manoeuvre,
                new Probe(new Item(manoeuvre.id(), other, place()), probe.position(), probe.technique()));
    }

    static Appearance.Measure measure(String label, double amount, String unit) {
        return new Appearance.Measure(label, Math.rint(amount * 10) / 10 + 0.0, unit);
    }
}
