package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Physiology;

/**
 * Pulse and arterial pressure, lying, sitting and standing.
 *
 * <p>Known limits: both arms are alike, and what happens in the first seconds after standing is not followed.
 */
final class PressureReader implements SignReader {

    @Override
    public String name() {
        return "pressure";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        Circulation now = now(body, manoeuvre);
        return switch (manoeuvre.part()) {
            case "rate" -> beats(now.rate());
            case "rhythm" -> new Finding.Seen(rhythm(body));
            case "mean" -> new Finding.Measured(Math.rint(now.mean() * 10) / 10, "mmHg");
            case "class" ->
                new Finding.Seen(
                        PressureClass.of(body.physiology(), now, probe.item().place()));
            default -> amount(now, probe.item().place());
        };
    }

    private static Circulation now(Body body, Manoeuvre manoeuvre) {
        return switch (manoeuvre.part()) {
            case "sitting" -> Circulation.sitting(body);
            case "standing-1", "from-sitting" -> Circulation.standing(body, 1);
            case "standing-3" -> Circulation.standing(body, 3);
            default -> Circulation.lying(body);
        };
    }

    private static Finding.Measured amount(Circulation circulation, String place) {
        return switch (place) {
            case "systolic" -> new Finding.Measured(Math.rint(circulation.systolic()), "mmHg");
            case "diastolic" -> new Finding.Measured(Math.rint(circulation.diastolic()), "mmHg");
            case "pulse" -> beats(circulation.rate());
            default -> throw new IllegalArgumentException("no reading of the pressure is called \"" + place + "\"");
        };
    }

    private static Finding.Measured beats(double rate) {
        return new Finding.Measured(Math.rint(rate), "beats/min");
    }

    private static String rhythm(Body body) {
        double led = body.physiology().constant("pulse.led-from");
        return body.quantity("atrial-contraction") >= led ? "regular" : "irregular";
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        Circulation now = now(body, manoeuvre);
        CuffTrace trace = new CuffTrace(body, now);
        return switch (manoeuvre.part()) {
            case "rate", "rhythm" -> new Appearance("pulse", List.of(trace.pulse()), List.of(), "");
            default -> new Appearance("cuff", trace.curves(), List.of(), words(body, now));
        };
    }

    /** What the patient says of it follows how far the pressure has fallen from lying. */
    private static String words(Body body, Circulation now) {
        return body.physiology().saying("pressure-fall", Circulation.lying(body).systolic() - now.systolic());
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return List.of();
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return switch (manoeuvre.part()) {
            case "rate" -> Set.of("heart-rate", "thyroid-state", "blood-loss");
            case "rhythm" -> Set.of("atrial-contraction");
            case "lying", "mean", "class", "sitting" ->
                Set.of("systolic-lying", "diastolic-lying", "thyroid-state", "blood-loss");
            default -> Set.of("blood-loss", "autonomic-gain", "standing-pressor");
        };
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return switch (manoeuvre.part()) {
            case "rhythm" -> finding.equals(new Finding.Seen("regular"));
            case "rate" -> within(body, "pulse", (Finding.Measured) finding);
            case "lying", "sitting" -> within(body, "pressure." + probe.item().place(), (Finding.Measured) finding);
            case "class" ->
                amount(now(body, manoeuvre), "systolic").value()
                                < body.physiology().constant("pressure.systolic.high")
                        && amount(now(body, manoeuvre), "diastolic").value()
                                < body.physiology().constant("pressure.diastolic.high");
            case "mean" ->
                within(body, "pressure.systolic", amount(now(body, manoeuvre), "systolic"))
                        && within(body, "pressure.diastolic", amount(now(body, manoeuvre), "diastolic"));
            case "from-sitting" -> {
                String place = probe.item().place();
                double fall = amount(Circulation.sitting(body), place).value() - ((Finding.Measured) finding).value();
                yield fall < body.physiology().constant("sitting.fall." + place);
            }
            default -> steady(body, probe.item().place(), ((Finding.Measured) finding).value());
        };
    }

    private static boolean within(Body body, String name, Finding.Measured finding) {
        Physiology n = body.physiology();
        return finding.value() >= n.constant(name + ".low") && finding.value() < n.constant(name + ".high");
    }

    /** Standing, the change from lying is judged, not the pressure reached. */
    private static boolean steady(Body body, String place, double standing) {
        Physiology n = body.physiology();
        Circulation lying = Circulation.lying(body);
        double change = standing - amount(lying, place).value();
        return switch (place) {
            case "systolic" -> {
                boolean high = lying.systolic() >= n.constant("pressure.systolic.high");
                double fall = n.constant(high ? "standing.fall.systolic-if-high" : "standing.fall.systolic");
                yield -change < fall && change < n.constant("standing.rise.systolic");
            }
            case "diastolic" -> -change < n.constant("standing.fall.diastolic");
            default -> change < n.constant("standing.rise.pulse");
        };
    }
}
