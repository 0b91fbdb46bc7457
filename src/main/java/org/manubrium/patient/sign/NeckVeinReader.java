package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Physiology;

/**
 * The neck veins: how high the column stands, whether and how it moves, what pressure on the belly and breathing do to it.
 *
 * <p>Known limits: the height is that of the column's mean at the end of a breath out, and both veins are alike.
 */
final class NeckVeinReader implements SignReader {
    private static final double FINE_MS = 20;
    private static final double COARSE_MS = 50;

    @Override
    public String name() {
        return "neck-vein";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        VenousColumn column = VenousColumn.of(body);
        double angle = angle(column, manoeuvre, probe);
        return switch (manoeuvre.part()) {
            case "height" -> centimetres(column.seen(column.height(angle), angle));
            case "pulsation" -> new Finding.Seen(pulsation(body, column, angle));
            case "wave" -> new Finding.Seen(VenousWave.of(body).word());
            case "abdominojugular" -> centimetres(VenousLoad.of(body).held(column, angle));
            case "breathing" -> new Finding.Seen(VenousLoad.of(body).breathing());
            default -> throw new IllegalArgumentException("no neck vein test is called \"" + manoeuvre.part() + "\"");
        };
    }

    private static Finding centimetres(double amount) {
        return new Finding.Measured(Math.round(amount * 10) / 10.0, "cm");
    }

    private static String pulsation(Body body, VenousColumn column, double angle) {
        if (column.hidden(angle)) {
            return "not-seen";
        }
        if (column.full(angle)) {
            return "full";
        }
        return VenousWave.of(body).word().equals("still") ? "still" : "moves";
    }

    /** The height is read at a set angle; for the rest the bed is moved until the top stands in the middle of the neck. */
    private static double angle(VenousColumn column, Manoeuvre manoeuvre, Probe probe) {
        String chosen = manoeuvre.part().equals("height")
                ? probe.choice("bed-angle", "45")
                : probe.choice("bed-tilt", "mid-neck");
        return switch (chosen) {
            case "0" -> 0;
            case "30" -> 30;
            case "60" -> 60;
            case "90" -> 90;
            case "mid-neck" -> column.tilt();
            default -> 45;
        };
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        double angle = angle(VenousColumn.of(body), manoeuvre, probe);
        VenousLoad load = VenousLoad.of(body);
        return switch (manoeuvre.part()) {
            case "abdominojugular" -> pressed(new VenousTrace(body, angle, 16, COARSE_MS, load::pressed), load);
            case "breathing" -> breathed(new VenousTrace(body, angle, 12, COARSE_MS, load::breathed), load);
            case "wave" -> still(new VenousTrace(body, angle, 8, FINE_MS, t -> 0));
            default -> still(new VenousTrace(body, angle, 4, FINE_MS, t -> 0));
        };
    }

    private static Appearance still(VenousTrace trace) {
        return new Appearance("neck-veins", List.of(trace.column(), trace.carotid()), trace.marks(), "");
    }

    private static Appearance pressed(VenousTrace trace, VenousLoad load) {
        List<Appearance.Measure> marks = new ArrayList<>(trace.marks());
        marks.add(new Appearance.Measure("hand presses from", load.pressFrom(), "s"));
        marks.add(new Appearance.Measure("hand lifts at", load.pressUntil(), "s"));
        return new Appearance("neck-veins", List.of(trace.column(), trace.carotid()), List.copyOf(marks), "");
    }

    private static Appearance breathed(VenousTrace trace, VenousLoad load) {
        Appearance.Curve breath = trace.curve("breath in", "share", load::breath);
        return new Appearance("neck-veins", List.of(trace.column(), trace.carotid(), breath), trace.marks(), "");
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return List.of();
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return switch (manoeuvre.part()) {
            case "height", "pulsation" -> Set.of("right-atrial-pressure", "caval-patency");
            case "wave" ->
                Set.of(
                        "right-atrial-pressure",
                        "caval-patency",
                        "atrial-contraction",
                        "tricuspid-leak",
                        "tricuspid-stenosis",
                        "right-ventricle-stiffness",
                        "pericardial-restraint",
                        "pericardial-fluid",
                        "atrioventricular-dissociation");
            default ->
                Set.of(
                        "caval-patency",
                        "right-heart-reserve",
                        "tricuspid-leak",
                        "tricuspid-stenosis",
                        "pericardial-restraint");
        };
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        Physiology numbers = body.physiology();
        Finding healthy = find(body.healthy(), manoeuvre, probe);
        if (finding instanceof Finding.Measured measured) {
            boolean low = measured.value() < ((Finding.Measured) healthy).value() - numbers.constant("neck-vein.low");
            return manoeuvre.part().equals("height")
                    ? measured.value() <= numbers.constant("neck-vein.upper-limit") && !low
                    : measured.value() < numbers.constant("neck-vein.held-rise");
        }
        return finding.equals(healthy);
    }
}
