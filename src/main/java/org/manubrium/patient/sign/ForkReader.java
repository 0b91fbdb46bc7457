package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** The tuning fork on the head: on which side it is heard (Weber), and whether by air or by bone (Rinne). */
final class ForkReader implements SignReader {
    static final String MIDDLE = "middle";
    static final String AIR = "air";
    static final String BONE = "bone";
    static final String NEITHER = "not-heard";
    private static final List<String> BY_LOUDNESS = List.of(NEITHER, BONE, AIR);

    @Override
    public String name() {
        return "fork";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Seen(isWeber(manoeuvre) ? weber(body) : rinne(body, probe));
    }

    private static boolean isWeber(Manoeuvre manoeuvre) {
        return manoeuvre.part().equals("weber");
    }

    /** Bone reaches both inner ears alike; a gap keeps the noise of the room out and the sound of the bone in. */
    private static String weber(Body body) {
        double difference = inTheBone(body, Side.RIGHT) - inTheBone(body, Side.LEFT);
        if (Math.abs(difference) < Hearing.number(body, "hearing.weber-least")) {
            return MIDDLE;
        }
        return "to-" + (difference > 0 ? Side.RIGHT : Side.LEFT).word();
    }

    private static double inTheBone(Body body, Side ear) {
        Hearing hearing = Hearing.of(body, ear);
        return Hearing.number(body, "hearing.weber-gap") * hearing.gap() - hearing.sensing();
    }

    /** Beside the ear against on the bone, where the other ear may hear it across the skull. */
    private static String rinne(Body body, Probe probe) {
        Side ear = probe.item().side();
        Hearing here = Hearing.of(body, ear);
        double level = Hearing.number(body, "hearing.fork-level");
        double air = ahead(body, probe) - here.air();
        double bone = -here.sensing();
        if (!probe.choice("rinne-other-ear", "open").equals("masked")) {
            bone = Math.max(
                    bone, -Hearing.of(body, ear.opposite()).sensing() - Hearing.number(body, "hearing.bone-across"));
        }
        if (Math.max(air, bone) < -level) {
            return NEITHER;
        }
        return air >= bone ? AIR : BONE;
    }

    private static double ahead(Body body, Probe probe) {
        double personal = Hearing.number(body, "hearing.air-ahead-spread")
                * body.person().variation().of("air-ahead", probe.item().side());
        double pitch = probe.choice("fork", "512").equals("256") ? Hearing.number(body, "hearing.air-ahead-256") : 0;
        return Hearing.number(body, "hearing.air-ahead") + personal + pitch;
    }

    /** For the Weber the patient points; for the Rinne says which of two was louder: first the bone, then the air. */
    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        if (isWeber(manoeuvre)) {
            double cm = Hearing.number(body, "hearing.points") * Integer.signum(toTheRight(weber(body)));
            return new Appearance(
                    "fork-middle",
                    List.of(),
                    List.of(new Appearance.Measure("points to the right of the midline", cm, "cm")),
                    body.physiology().saying("weber", 0));
        }
        int said = BY_LOUDNESS.indexOf(rinne(body, probe));
        return new Appearance(
                "fork-ear", List.of(), List.of(), body.physiology().saying("rinne", said));
    }

    private static int toTheRight(String weber) {
        return weber.equals("to-right") ? 1 : weber.equals("to-left") ? -1 : 0;
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        List<Strand> found = new ArrayList<>();
        boolean weber = isWeber(manoeuvre);
        for (Side ear :
                weber ? List.of(Side.RIGHT, Side.LEFT) : List.of(probe.item().side())) {
            found.add(new Strand("sound-conduction", Hearing.conduction(body, ear)));
            found.add(new Strand(weber ? "sound-sensing" : "sound-sensing-across", Hearing.sensing(body, ear)));
        }
        return List.copyOf(found);
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return finding.equals(new Finding.Seen(isWeber(manoeuvre) ? MIDDLE : AIR));
    }
}
