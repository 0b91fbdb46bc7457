package org.manubrium.patient.sign;

import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.heart.Heart;
import org.manubrium.patient.heart.Load;
import org.manubrium.patient.heart.Stethoscope;
import org.manubrium.patient.heart.ValveSounds;

/** The first sound at the apex; the parts of the second sound, how loud they are and how they part in breathing. */
final class ValveSoundReader extends HeartReader {
    ValveSoundReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "valve-sound";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        Heart heart = heart(body, probe);
        return switch (manoeuvre.part()) {
            case "first" -> new Finding.Seen(first(heart));
            case "split" -> new Finding.Seen(split(heart));
            case "second" -> new Finding.Graded("sound-loudness", tenth(second(heart, probe)));
            default -> throw new IllegalArgumentException("no sound is called \"" + manoeuvre.part() + "\"");
        };
    }

    private static String first(Heart heart) {
        ValveSounds valves = new ValveSounds(heart);
        if (valves.varies()) {
            return "varies";
        }
        double told = heart.number("sound.told");
        return valves.first() >= told ? "loud" : valves.first() <= -told ? "soft" : "usual";
    }

    private static double second(Heart heart, Probe probe) {
        ValveSounds valves = new ValveSounds(heart);
        return aortic(probe) ? valves.aortic() : valves.pulmonary();
    }

    private static boolean aortic(Probe probe) {
        return probe.item().place().equals("aortic");
    }

    /** The ear parts two sounds from about 30 ms on, and only where both are loud enough to be heard. */
    private static String split(Heart heart) {
        ValveSounds out = new ValveSounds(heart);
        ValveSounds in = new ValveSounds(
                heart.under(heart.load().and(Load.of(heart.body().physiology(), "breath-in"))));
        double ear = heart.number("split.ear");
        double lost = heart.number("split.lost");
        if (out.aortic() <= lost || out.pulmonary() <= lost) {
            return "single";
        }
        if (out.split() <= -ear) {
            return "reversed";
        }
        if (out.split() >= ear) {
            return in.split() - out.split() < heart.number("split.fixed") ? "fixed" : "wide";
        }
        return in.split() >= ear ? "closes" : "single";
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return switch (manoeuvre.part()) {
            case "split" -> "closes";
            case "second" -> "normal";
            default -> "usual";
        };
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        String place = manoeuvre.part().equals("first")
                ? "mitral"
                : manoeuvre.part().equals("split") ? "pulmonary" : probe.item().place();
        Stethoscope through = laid(heart(body, probe), place, manoeuvre, probe);
        return sound(through, breath(manoeuvre, probe));
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        ValveSounds valves = new ValveSounds(heart(body, probe));
        return switch (manoeuvre.part()) {
            case "first" -> valves.firstQuantities();
            case "split" -> ValveSounds.SPLIT;
            default -> (aortic(probe) ? valves.aorticCauses() : valves.pulmonaryCauses()).main();
        };
    }
}
