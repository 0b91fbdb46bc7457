package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Physiology;

/**
 * The pupils: their size in light and dark, their answer to light and near.
 *
 * <p>Known limits: the outline is always round, no drug acts on them, and the delay does not depend on the light.
 */
final class PupilReader implements SignReader {

    @Override
    public String name() {
        return "pupil";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return PupilJudge.of(body, manoeuvre, probe)
                .finding(manoeuvre.part(), probe.item().side());
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        PupilPlan plan = PupilPlan.of(body.physiology(), manoeuvre, probe);
        PupilTrace trace = PupilTrace.run(body, Eyes.of(body), plan.before(), plan.spells());
        return new Appearance("pupils", trace.curves(), plan.marks(), "");
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        Side eye = probe.item().side();
        return switch (manoeuvre.part()) {
            case "swing", "dark-lag" -> way(body, List.of(Side.RIGHT, Side.LEFT), List.of(Side.RIGHT, Side.LEFT));
            case "near" -> near(body, eye);
            default -> size(body, eye);
        };
    }

    private static List<Strand> way(Body body, List<Side> lit, List<Side> watched) {
        List<Strand> found = new ArrayList<>();
        watched.forEach(eye -> found.addAll(outward(body, eye)));
        watched.forEach(
                eye -> found.add(new Strand("light-relay", paths(body, eye).lightRelay())));
        lit.forEach(eye -> found.add(new Strand("light-in", paths(body, eye).lightIn())));
        return List.copyOf(found);
    }

    /** What narrows the pupil, and what it is narrowed from. */
    private static List<Strand> outward(Body body, Side eye) {
        PupilPaths paths = paths(body, eye);
        return List.of(
                new Strand("pupil-drive", paths.drive()),
                new Strand("ciliary", paths.ciliary()),
                new Strand("sphincter", paths.sphincter()),
                widening(body, eye),
                new Strand("pupil-inhibition", paths.inhibition()));
    }

    private static List<Strand> near(Body body, Side eye) {
        List<Strand> found = new ArrayList<>(outward(body, eye));
        found.add(new Strand("near-drive", paths(body, eye).nearDrive()));
        return List.copyOf(found);
    }

    /** The room lights both eyes, so that both have a say in the size from which a pupil starts. */
    private static List<Strand> size(Body body, Side eye) {
        return way(body, List.of(Side.RIGHT, Side.LEFT), List.of(eye));
    }

    private static Strand widening(Body body, Side eye) {
        return new Strand("pupil-widening", paths(body, eye).widening());
    }

    private static PupilPaths paths(Body body, Side eye) {
        return new PupilPaths(body.anatomy(), eye);
    }

    /** A pupil of the size this person's would have in health passes, however unequal they were born. */
    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        Physiology numbers = body.physiology();
        if (finding instanceof Finding.Graded reaction) {
            return reaction.amount() >= numbers.constant("pupil.reaction-normal");
        }
        if (finding instanceof Finding.Seen seen) {
            return seen.code().equals(PupilJudge.NO_DEFECT) || seen.code().equals(PupilJudge.PROMPT);
        }
        double found = ((Finding.Measured) finding).value();
        if (manoeuvre.part().equals("dark-lag")) {
            return found < numbers.constant("pupil.lag-limit");
        }
        double healthy = ((Finding.Measured) find(body.healthy(), manoeuvre, probe)).value();
        return Math.abs(found - healthy) < numbers.constant("pupil.difference-noticed");
    }
}
