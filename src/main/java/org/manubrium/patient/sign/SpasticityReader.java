package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** How much a quick stretch is resisted: the release of the stretch reflex of that muscle, as far as its arc conducts. */
final class SpasticityReader implements SignReader {
    private final Examination examination;

    SpasticityReader(Examination examination) {
        this.examination = examination;
    }

    @Override
    public String name() {
        return "spasticity";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        String arc = manoeuvre.part();
        LimbState limb =
                new LimbState(body, body.anatomy().arc(arc).area(), probe.item().side());
        double stiff = limb.undriven() >= LimbState.constant(body, "limb.drive-lost")
                ? LimbState.constant(body, "limb.stiff-as-grade")
                : 0;
        double released = limb.released(arc) * limb.arc(arc) * (1 - limb.shocked(arc));
        return new Finding.Graded("spasticity", Math.rint(Math.max(stiff, released) * 100) / 100);
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        double amount = ((Finding.Graded) find(body, manoeuvre, probe)).amount();
        double most = LimbState.constant(body, "limb.spastic-newton");
        double lasts = 0.08 + 0.3 * amount;
        return new Appearance(
                "stretch",
                List.of(
                        LimbNumbers.curve(
                                "resists",
                                "N",
                                10,
                                100,
                                t -> t > 0.8 ? 0 : 4 + most * amount * LimbNumbers.bump(t, 0.25 + 0.1 * amount, lasts)),
                        LimbNumbers.curve("joint", "degrees", 10, 100, t -> range(amount) * Math.min(1, t / 0.8))),
                List.of(new Appearance.Measure("range moved through", range(amount), "degrees")),
                "");
    }

    private static double range(double amount) {
        return Math.rint(130 - 60 * amount * amount);
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        LimbState limb = new LimbState(
                body, body.anatomy().arc(manoeuvre.part()).area(), probe.item().side());
        return List.of(
                new Strand(
                        "tone-control",
                        body.anatomy().control(manoeuvre.part(), probe.item().side())),
                limb.drive());
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return examination
                .scale(manoeuvre.scale())
                .grade(((Finding.Graded) finding).amount())
                .code()
                .equals("0");
    }
}
