package org.manubrium.patient.sign;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** One eye at rest, moved in each direction, and turned in to look near. */
final class GazeReader implements SignReader {
    static final String AHEAD = "ahead";

    @Override
    public String name() {
        return "gaze";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        Gaze gaze = gaze(body, probe);
        return switch (manoeuvre.part()) {
            case "rest" -> new Finding.Seen(rest(gaze));
            case "converge" -> new Finding.Graded("eye-movement", gaze.converging());
            default -> new Finding.Graded("eye-movement", gaze.share(target(manoeuvre, probe)));
        };
    }

    private static Gaze gaze(Body body, Probe probe) {
        return new Gaze(body, probe.item().side());
    }

    private static Gaze.Target target(Manoeuvre manoeuvre, Probe probe) {
        return manoeuvre.part().equals("version") ? Gaze.Target.of(probe.item().place()) : Gaze.Target.AHEAD;
    }

    private static String rest(Gaze gaze) {
        double outward = gaze.outward(Gaze.Target.AHEAD) / gaze.number("gaze.noticed-across");
        double upward = gaze.upward(Gaze.Target.AHEAD) / gaze.number("gaze.noticed-up");
        if (outward >= 1 && upward < -0.3) {
            return "down-and-out";
        }
        if (Math.abs(outward) >= 1) {
            return outward > 0 ? "out" : "in";
        }
        return upward >= 0.7 ? "high" : upward <= -0.7 ? "low" : AHEAD;
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        if (manoeuvre.part().equals("converge")) {
            return NearShown.of(body);
        }
        Gaze.Target asked = target(manoeuvre, probe);
        boolean right = probe.item().side() == Side.RIGHT;
        return new GazeShown(body, right ? asked : asked.fromTheOtherEye()).show();
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        Gaze gaze = gaze(body, probe);
        List<Pathway> paths = ways(manoeuvre, target(manoeuvre, probe)).stream()
                .map(gaze::path)
                .toList();
        return Pieces.of(paths.toArray(Pathway[]::new));
    }

    private static List<String> ways(Manoeuvre manoeuvre, Gaze.Target target) {
        return switch (manoeuvre.part()) {
            case "rest" -> List.of("outward", "inward", "up-out", "up-in", "down-out", "down-in");
            case "converge" -> List.of("converge");
            default -> towards(target);
        };
    }

    private static List<String> towards(Gaze.Target target) {
        if (target.upward() == 0) {
            return List.of(target.outward() > 0 ? "outward" : "inward");
        }
        String way = target.upward() > 0 ? "up" : "down";
        return List.of(way + "-out", way + "-in");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Gaze.Target target = target(manoeuvre, probe);
        Set<String> found = new LinkedHashSet<>();
        if (target.upward() > 0) {
            found.add(gaze(body, probe).orbit("tight-lower"));
        } else if (target.outward() > 0) {
            found.add(gaze(body, probe).orbit("tight-inner"));
        }
        return found;
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return finding instanceof Finding.Graded graded
                ? graded.amount() >= body.physiology().constant("gaze.full")
                : finding.equals(new Finding.Seen(AHEAD));
    }
}
