package org.manubrium.patient.sign;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.heart.ExtraSounds;
import org.manubrium.patient.heart.Stethoscope;
import org.manubrium.patient.heart.Thud;

/** Sounds beside the first and the second at one area: the low ones of filling, the sharp ones of valves and pericardium. */
final class ExtraSoundReader extends HeartReader {
    ExtraSoundReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "extra-sound";
    }

    private static boolean low(Manoeuvre manoeuvre) {
        return manoeuvre.part().equals("low");
    }

    private static Stethoscope through(Body body, Manoeuvre manoeuvre, Probe probe) {
        return stethoscope(heart(body, probe), probe.item().place(), manoeuvre, probe);
    }

    private static List<Thud> heard(Body body, Manoeuvre manoeuvre, Probe probe) {
        Stethoscope through = through(body, manoeuvre, probe);
        ExtraSounds sounds = new ExtraSounds(through.heart());
        return (low(manoeuvre) ? sounds.low() : sounds.sharp())
                .stream().filter(thud -> through.audible(through.hears(thud))).toList();
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        List<Thud> heard = heard(body, manoeuvre, probe);
        return new Finding.Seen(low(manoeuvre) ? filling(heard) : sharp(heard, through(body, manoeuvre, probe)));
    }

    private static String filling(List<Thud> heard) {
        boolean third = heard.stream().anyMatch(thud -> thud.id().startsWith("third"));
        boolean fourth = heard.stream().anyMatch(thud -> thud.id().startsWith("fourth"));
        return third ? (fourth ? "both" : "third") : fourth ? "fourth" : "none";
    }

    private static String sharp(List<Thud> heard, Stethoscope through) {
        Optional<Thud> loudest = heard.stream().max(Comparator.comparingDouble(through::hears));
        return loudest.map(thud -> switch (thud.id()) {
                    case "opening-snap" -> "opening-snap";
                    case "aortic-click", "pulmonary-click" -> "ejection-click";
                    case "mid-click" -> "mid-click";
                    case "knock" -> "knock";
                    default -> "metal";
                })
                .orElse("none");
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "none";
    }

    /** In the young a third sound of the left side may belong to health. */
    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        boolean young = finding.equals(find(body.healthy(), manoeuvre, probe));
        return super.normal(body, manoeuvre, probe, finding) || young;
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        return sound(laid(heart(body, probe), probe.item().place(), manoeuvre, probe), breath(manoeuvre, probe));
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        ExtraSounds sounds = new ExtraSounds(through(body, manoeuvre, probe).heart());
        Set<String> found = new HashSet<>();
        heard(body, manoeuvre, probe).forEach(thud -> found.addAll(sounds.quantities(thud.id())));
        return Set.copyOf(found);
    }
}
