package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.heart.ArterialPulse;
import org.manubrium.patient.heart.Heart;

/** The shape and size of the arterial pulse, and what beats, breath and distance do to it. */
final class PulseReader extends HeartReader {
    private static final double STEP_MS = 20;
    private static final int SAMPLES = 250;

    PulseReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "pulse-wave";
    }

    private static ArterialPulse pulse(Body body, Probe probe) {
        return new ArterialPulse(heart(body, probe));
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        ArterialPulse pulse = pulse(body, probe);
        return switch (manoeuvre.part()) {
            case "character" -> new Finding.Seen(pulse.character());
            case "volume" -> new Finding.Graded("pulse-volume", Math.rint(pulse.volume() * 100) / 100);
            case "alternation" -> new Finding.Seen(pulse.alternates() ? "alternate" : "equal");
            case "femoral" -> new Finding.Seen(pulse.femoralDelay() >= pulse.told() ? "late" : "together");
            case "paradox" -> new Finding.Measured(Math.rint(pulse.fallOnBreathIn()), "mmHg");
            default -> throw new IllegalArgumentException("no pulse is felt by \"" + manoeuvre.part() + "\"");
        };
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return switch (manoeuvre.part()) {
            case "alternation" -> "equal";
            case "femoral" -> "together";
            default -> "normal";
        };
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return finding instanceof Finding.Measured fall
                ? fall.value() <= resting(body).number("pulse.paradox")
                : super.normal(body, manoeuvre, probe, finding);
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        ArterialPulse pulse = pulse(body, probe);
        Heart heart = resting(body);
        if (manoeuvre.part().equals("paradox")) {
            double top = Math.rint(heart.arteries().systolic());
            return new Appearance(
                    "breath-cuff",
                    List.of(),
                    List.of(
                            new Appearance.Measure("first sounds, in the breath out only, from", top, "mmHg"),
                            new Appearance.Measure(
                                    "sounds with every beat from", top - Math.rint(pulse.fallOnBreathIn()), "mmHg")),
                    "");
        }
        Beats beats = Beats.of(body, heart.rate(), SAMPLES * STEP_MS / 1000);
        double later = manoeuvre.part().equals("femoral") ? pulse.femoralDelay() : 0;
        return new Appearance(
                "pulse-wave",
                List.of(
                        curve("artery", beats, pulse, 0),
                        curve(manoeuvre.part().equals("femoral") ? "groin" : "again", beats, pulse, later)),
                List.of(),
                "");
    }

    private static Appearance.Curve curve(String name, Beats beats, ArterialPulse pulse, double later) {
        ArterialPulse.Wave wave = pulse.wave();
        List<Double> sizes = IntStream.range(0, beats.upstrokes().size())
                .mapToObj(pulse::beat)
                .toList();
        List<Double> samples = IntStream.range(0, SAMPLES)
                .mapToObj(i -> Math.rint(height(beats, sizes, wave, i * STEP_MS - later) * 100) / 100 + 0.0)
                .toList();
        return new Appearance.Curve(name, "mm", STEP_MS, samples);
    }

    private static double height(Beats beats, List<Double> sizes, ArterialPulse.Wave wave, double ms) {
        double height = 0;
        for (int i = 0; i < sizes.size(); i++) {
            height = Math.max(height, wave.height(ms - beats.upstrokes().get(i) * 1000) * sizes.get(i));
        }
        return height;
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return switch (manoeuvre.part()) {
            case "character" -> pulse(body, probe).quantities();
            case "volume" -> pulse(body, probe).volumeQuantities();
            case "alternation" -> Set.of("left-ventricle-contraction");
            case "femoral" -> Set.of("aortic-coarctation");
            default -> ArterialPulse.PARADOX;
        };
    }
}
