package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.anatomy.RootShare;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.Site;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Phase;
import org.manubrium.patient.Sex;

/** The bulk of a muscle, which shrinks in the months after it has lost its nerve, and the twitching of one that is losing it. */
final class BulkReader implements SignReader {
    private static final String TWITCH = "twitch";

    private final Examination examination;

    BulkReader(Examination examination) {
        this.examination = examination;
    }

    @Override
    public String name() {
        return "muscle";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        String muscle = probe.item().place();
        Side side = probe.item().side();
        if (manoeuvre.part().equals(TWITCH)) {
            double lost = hornLost(body, muscle, side);
            boolean some = lost >= LimbState.constant(body, "limb.twitch-from")
                    && lost < LimbState.constant(body, "limb.twitch-to");
            return new Finding.Seen(some ? "twitches" : "none");
        }
        double kept = Math.rint((1 - body.lost(body.anatomy().supply(muscle, side), Phase.RELEASE)) * 100) / 100;
        return new Finding.Graded("bulk", kept);
    }

    /** Cells of the anterior horn that die slowly set their muscle twitching. */
    private static double hornLost(Body body, String muscle, Side side) {
        double lost = 0;
        for (RootShare root : body.anatomy().roots(muscle)) {
            lost += root.weight() * (1 - body.kept(Site.at("anterior horn", root.root(), side), Phase.RELEASE));
        }
        return lost;
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        Finding finding = find(body, manoeuvre, probe);
        if (finding instanceof Finding.Seen seen) {
            double rate = seen.code().equals("twitches") ? LimbState.constant(body, "limb.twitch-rate") : 0;
            return new Appearance(
                    "twitching",
                    List.of(LimbNumbers.curve("surface", "mm", 25, 200, t -> twitch(t, rate))),
                    List.of(new Appearance.Measure("flickers in a minute", rate, "")),
                    "");
        }
        double kept = ((Finding.Graded) finding).amount();
        return new Appearance(
                "muscle-bulk", List.of(), measures(body, probe.item().place(), kept), "");
    }

    /** How far the muscle stands out, and the tape over it: both follow the build, and the tape follows the muscle. */
    private static List<Appearance.Measure> measures(Body body, String muscle, double kept) {
        double build = 1
                + LimbState.constant(body, "limb.build-spread")
                        * body.person().variation().of("build");
        String sex = body.person().sex() == Sex.FEMALE ? "female" : "male";
        double full = LimbState.constant(body, "limb.stands-out." + muscle) * build;
        double lost = full * (1 - kept) * LimbState.constant(body, "limb.wasted-share");
        double tape = LimbState.constant(body, "limb.tape." + muscle + "." + sex) * build
                - lost * LimbState.constant(body, "limb.tape-per-thickness") / 10;
        return List.of(
                new Appearance.Measure("stands out by", Math.rint(full - lost), "mm"),
                new Appearance.Measure("tape over it", Math.rint(tape * 10) / 10, "cm"));
    }

    private static double twitch(double t, double rate) {
        double beats = t * rate / 60;
        return rate == 0
                ? 0
                : 1.5
                        * LimbNumbers.bump(
                                beats - Math.floor(beats), 0.3 + 0.2 * LimbNumbers.uneven(Math.floor(beats)), 0.04);
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        String role = manoeuvre.part().equals(TWITCH) ? TWITCH : "bulk";
        return List.of(new Strand(
                role, body.anatomy().supply(probe.item().place(), probe.item().side())));
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        if (finding instanceof Finding.Graded graded) {
            var levels = examination.scale(manoeuvre.scale()).levels();
            return examination.scale(manoeuvre.scale()).grade(graded.amount()).equals(levels.get(levels.size() - 1));
        }
        return finding.equals(new Finding.Seen("none"));
    }
}
