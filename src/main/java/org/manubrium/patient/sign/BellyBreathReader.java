package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** Which way the belly moves as the breath goes in. */
final class BellyBreathReader extends ChestReader {
    private static final String RIGHT = "lung.right.diaphragm";
    private static final String LEFT = "lung.left.diaphragm";

    BellyBreathReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "belly-breath";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        boolean weak = Math.min(body.quantity(RIGHT), body.quantity(LEFT)) >= constant(body, "chest.shape");
        return new Finding.Seen(weak ? "in" : "out");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return Set.of(RIGHT, LEFT);
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "out";
    }

    @Override
    Appearance show(Onlooker onlooker, Finding finding) {
        double mm = seen(finding).equals("in") ? -10 : 16;
        return new Appearance(
                "belly-breath",
                List.of(BreathingTrace.once("chest, outwards", 12), BreathingTrace.once("belly, outwards", mm)),
                List.of(),
                "");
    }
}
