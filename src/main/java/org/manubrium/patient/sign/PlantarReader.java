package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Phase;

/**
 * The plantar response. The skin of the sole (S1) must feel; then the big toe goes down by its flexors unless the
 * descending control is lost, when it goes up if its extensor (L5, deep fibular nerve) can lift it.
 */
final class PlantarReader implements SignReader {
    private static final String DOWN = "plantar-flexor";
    private static final String UP = "plantar-extensor";
    private static final double STEP_MS = 25;
    private static final int SAMPLES = 120;

    @Override
    public String name() {
        return "plantar";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Seen(response(body, probe.item().side()));
    }

    private static String response(Body body, Side side) {
        double enough = body.physiology().constant("plantar.enough");
        boolean control = body.lost(body.anatomy().control(DOWN, side), Phase.LOSS)
                < body.physiology().constant("plantar.control-lost");
        boolean shock = body.lost(body.anatomy().control(DOWN, side), Phase.SHOCK)
                >= body.physiology().constant("plantar.shock");
        double arc = body.conduction(body.anatomy().arc(control ? DOWN : UP, side));
        if (shock || arc < enough) {
            return "mute";
        }
        return control ? "flexor" : "extensor";
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        double toe = switch (response(body, probe.item().side())) {
            case "flexor" -> -body.physiology().constant("plantar.down-degrees");
            case "extensor" -> body.physiology().constant("plantar.up-degrees");
            default -> 0;
        };
        double fan = toe > 0 ? body.physiology().constant("plantar.fan-degrees") : 0;
        return new Appearance(
                "toe-stroke",
                List.of(stroke("big toe, up is positive", toe), stroke("other toes apart", fan)),
                List.of(),
                "");
    }

    /** The toe moves while the sole is stroked, holds, and lets go slowly. */
    private static Appearance.Curve stroke(String name, double degrees) {
        List<Double> samples = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            double t = i * STEP_MS / 1000;
            double rise = 1 / (1 + Math.exp(-(t - 0.7) * 9));
            double fall = 1 / (1 + Math.exp((t - 2.1) * 5));
            samples.add(Math.round(degrees * rise * fall * 10) / 10.0 + 0.0);
        }
        return new Appearance.Curve(name, "degrees", STEP_MS, List.copyOf(samples));
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side side = probe.item().side();
        return List.of(
                new Strand("arc", body.anatomy().arc(DOWN, side)),
                new Strand("control", body.anatomy().control(DOWN, side)));
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return finding.equals(new Finding.Seen("flexor"));
    }
}
