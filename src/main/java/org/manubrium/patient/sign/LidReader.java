package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Physiology;

/** How far the lids are open, in millimetres: raised by the third nerve, and a little by the sympathetic. */
final class LidReader implements SignReader {
    private static final int SAMPLES = 20;

    @Override
    public String name() {
        return "lid";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Measured(opening(body, probe.item().side()), "mm");
    }

    static double opening(Body body, Side eye) {
        Physiology numbers = body.physiology();
        PupilPaths paths = new PupilPaths(body.anatomy(), eye);
        double healthy = numbers.constant("lid.opening")
                + numbers.constant("lid.spread") * body.person().variation().of("lid")
                + numbers.constant("lid.unequal") * body.person().variation().of("lid", eye);
        double closed = numbers.constant("lid.without-levator");
        double raised = closed + (healthy - closed) * body.conduction(paths.lidLevator());
        double dropped = numbers.constant("lid.sympathetic") * (1 - body.conduction(paths.lidSympathetic()));
        double held = body.quantity(raisedBy(eye))
                + numbers.constant("lid.unchecked")
                        * (1 - body.conduction(CranialMotor.tract(body, "lid checking", eye)));
        double lifted = held * body.conduction(paths.lidLevator());
        return Math.round(Math.max(0, raised - dropped + lifted) * 10) / 10.0;
    }

    private static String raisedBy(Side eye) {
        return "orbit." + eye.word() + ".lid-raised";
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return Set.of(raisedBy(probe.item().side()));
    }

    /** Both eyes at once, as they are looked at. */
    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Appearance("lids", List.of(curve(body, Side.RIGHT), curve(body, Side.LEFT)), List.of(), "");
    }

    private static Appearance.Curve curve(Body body, Side eye) {
        double opening = opening(body, eye);
        List<Double> samples =
                java.util.stream.Stream.generate(() -> opening).limit(SAMPLES).toList();
        return new Appearance.Curve(eye.word(), "mm", PupilTrace.STEP_MS, samples);
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        PupilPaths paths = new PupilPaths(body.anatomy(), probe.item().side());
        return List.of(
                new Strand("lid-levator", paths.lidLevator()),
                new Strand("lid-sympathetic", paths.lidSympathetic()),
                new Strand(
                        "lid-checking",
                        CranialMotor.tract(body, "lid checking", probe.item().side())));
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        double healthy = opening(body.healthy(), probe.item().side());
        double found = ((Finding.Measured) finding).value();
        return Math.abs(found - healthy) < body.physiology().constant("lid.limit");
    }
}
