package org.manubrium.patient.sign;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.heart.Murmurs;
import org.manubrium.patient.heart.Stethoscope;

/**
 * Murmurs: when, how loud, of what shape and pitch, where loudest, where else heard. What it reads is written "timing", or
 * "timing/mitral" for a line that is always listened to at one area.
 */
final class MurmurReader extends HeartReader {
    static final String AREA = "area";
    private static final String CONTACT = "contact";
    static final List<String> AREAS = List.of("aortic", "pulmonary", "tricuspid", "mitral", "infraclavicular");

    MurmurReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "murmur";
    }

    private static String aspect(Manoeuvre manoeuvre) {
        return manoeuvre.part().split("/", 2)[0];
    }

    /** The area that the line is about; blank for one that is about wherever it is loudest. */
    private static String area(Manoeuvre manoeuvre, Probe probe) {
        String[] part = manoeuvre.part().split("/", 2);
        return part.length > 1 ? part[1] : probe.item().place();
    }

    private static Murmurs at(String area, Body body, Manoeuvre manoeuvre, Probe probe) {
        return Murmurs.through(stethoscope(heart(body, probe), area, manoeuvre, probe));
    }

    /** At an area that is tried, and wherever it is loudest, through either chest piece; else through the chosen one. */
    private static Murmurs murmurs(Body body, Manoeuvre manoeuvre, Probe probe) {
        String area = area(manoeuvre, probe);
        if (area.isBlank()) {
            return loudest(body, manoeuvre, probe);
        }
        boolean anyPiece = probe.item().place().equals(area);
        return anyPiece ? best(List.of(area), body, manoeuvre, probe) : at(area, body, manoeuvre, probe);
    }

    static Murmurs loudest(Body body, Manoeuvre manoeuvre, Probe probe) {
        return best(AREAS, body, manoeuvre, probe);
    }

    /** Where it is loudest of some areas, through the chest piece that shows it best. */
    private static Murmurs best(List<String> areas, Body body, Manoeuvre manoeuvre, Probe probe) {
        Stethoscope first = stethoscope(heart(body, probe), areas.get(0), manoeuvre, probe);
        return areas.stream()
                .flatMap(area -> Stream.of("diaphragm", "bell")
                        .map(piece -> new Stethoscope(first.heart(), area, piece, first.position(), first.heldOut())))
                .map(Murmurs::through)
                .max(Comparator.comparingDouble(Murmurs::level))
                .orElseThrow();
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        Murmurs murmurs = murmurs(body, manoeuvre, probe);
        return switch (aspect(manoeuvre)) {
            case "timing" -> new Finding.Seen(murmurs.timing());
            case "grade" -> new Finding.Graded("murmur", tenth(murmurs.level()));
            case "shape" -> new Finding.Seen(murmurs.shape());
            case "pitch" -> new Finding.Seen(murmurs.pitch());
            case "loudest" ->
                new Finding.Seen(murmurs.heard()
                        .map(jet -> murmurs.stethoscope().place())
                        .orElse("none"));
            case "spread" ->
                new Finding.Seen(murmurs.heard().map(jet -> "heard").orElse("none"));
            default -> throw new IllegalArgumentException("no murmur is read by \"" + manoeuvre.part() + "\"");
        };
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return aspect(manoeuvre).equals("grade") ? "0" : "none";
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        String area = area(manoeuvre, probe);
        String place = area.isBlank() ? choice(manoeuvre, probe, AREA, "mitral") : area;
        Stethoscope through = laid(heart(body, probe), place, manoeuvre, probe);
        if (!aspect(manoeuvre).equals("grade")) {
            return sound(through, breath(manoeuvre, probe));
        }
        double touches = through.heart().number("contact." + choice(manoeuvre, probe, CONTACT, "flat"));
        return sound(through, breath(manoeuvre, probe), touches, List.of(felt(body, probe)));
    }

    /** What the flat of the hand feels in place of the stethoscope. */
    private static Appearance.Measure felt(Body body, Probe probe) {
        double share = PrecordiumReader.tremble(PrecordiumReader.murmurs(body, probe));
        return new Appearance.Measure(
                "tremble under the flat hand in its place", Math.rint(100 * share), "% of the strongest");
    }

    /** Only what is heard there explains what is heard there. */
    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        Murmurs murmurs = murmurs(body, manoeuvre, probe);
        return murmurs.all().stream()
                .filter(heard -> murmurs.stethoscope().audible(heard.level()))
                .flatMap(heard -> heard.jet().kind().quantities().stream())
                .collect(Collectors.toSet());
    }
}
