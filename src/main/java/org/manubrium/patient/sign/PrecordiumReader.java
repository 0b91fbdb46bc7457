package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.heart.Heart;
import org.manubrium.patient.heart.Jet;
import org.manubrium.patient.heart.Murmurs;
import org.manubrium.patient.heart.Precordium;
import org.manubrium.patient.heart.Stethoscope;

/**
 * What a hand feels over the heart: the apex beat, a lift beside the breast bone, a thrill.
 *
 * <p>Known limit: a heart pushed aside by the lungs is not followed.
 */
final class PrecordiumReader extends HeartReader {
    private static final int SAMPLES = 100;
    private static final double STEP_MS = 10;

    PrecordiumReader(Examination examination) {
        super(examination);
    }

    @Override
    public String name() {
        return "precordium";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        Precordium felt = new Precordium(heart(body, probe), probe.position());
        return switch (manoeuvre.part()) {
            case "apex-place" -> new Finding.Seen(felt.place());
            case "apex-character" -> new Finding.Seen(felt.character());
            case "heave" -> new Finding.Graded("heave", tenth(felt.heave() * 10) / 10);
            case "thrill" -> new Finding.Seen(thrill(murmurs(body, probe)));
            default -> throw new IllegalArgumentException("nothing is felt called \"" + manoeuvre.part() + "\"");
        };
    }

    static Murmurs murmurs(Body body, Probe probe) {
        Heart heart = heart(body, probe);
        return Murmurs.through(new Stethoscope(heart, probe.item().place(), "diaphragm", probe.position(), false));
    }

    private static String thrill(Murmurs murmurs) {
        double from = murmurs.stethoscope().heart().number("thrill.from");
        if (murmurs.level() < from) {
            return "none";
        }
        return switch (murmurs.loudest().kind().timing()) {
            case EJECTION, LEAK -> "systolic";
            case CONTINUOUS -> "continuous";
            default -> "diastolic";
        };
    }

    @Override
    String usual(Manoeuvre manoeuvre) {
        return "none";
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return switch (manoeuvre.part()) {
            case "apex-place" -> List.of("not-felt", "inside").contains(code(manoeuvre, finding));
            case "apex-character" -> List.of("not-felt", "brief").contains(code(manoeuvre, finding));
            default -> super.normal(body, manoeuvre, probe, finding);
        };
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        Precordium felt = new Precordium(heart(body, probe), probe.position());
        return switch (manoeuvre.part()) {
            case "thrill" -> trembling(body, probe);
            case "heave" -> lift("heave", "lift beside the breast bone", felt::lifted, List.of());
            default ->
                lift(
                        "apex-beat",
                        "lift of the apex",
                        felt::apex,
                        List.of(
                                measure("outside the midclavicular line, inside is negative", felt.outwards(), "cm"),
                                measure("rib space", felt.space(), ""),
                                measure("width", felt.width(), "cm")));
        };
    }

    private static Appearance.Measure measure(String label, double amount, String unit) {
        return new Appearance.Measure(label, tenth(amount), unit);
    }

    private static Appearance lift(
            String sign,
            String name,
            java.util.function.DoubleUnaryOperator height,
            List<Appearance.Measure> measures) {
        return new Appearance(sign, List.of(curve(name, "mm", height)), measures, "");
    }

    private static Appearance.Curve curve(String name, String unit, java.util.function.DoubleUnaryOperator height) {
        List<Double> samples = java.util.stream.IntStream.range(0, SAMPLES)
                .mapToObj(i -> Math.rint(height.applyAsDouble(i * STEP_MS) * 100) / 100 + 0.0)
                .toList();
        return new Appearance.Curve(name, unit, STEP_MS, samples);
    }

    /** How strongly the skin trembles under the hand, 0..1; what is too weak is not felt at all. */
    static double tremble(Murmurs murmurs) {
        double over = murmurs.level() - murmurs.stethoscope().heart().number("thrill.from");
        return over < 0 ? 0 : 0.5 + Math.min(0.5, over / 10);
    }

    /** The fingers feel what is strong and low enough: the tremble stands over one beat. */
    private static Appearance trembling(Body body, Probe probe) {
        Murmurs murmurs = murmurs(body, probe);
        Jet jet = murmurs.loudest();
        Heart heart = murmurs.stethoscope().heart();
        double height = tremble(murmurs);
        double systole = heart.systole();
        return new Appearance(
                "thrill",
                List.of(curve("tremble under the hand", "of the strongest", ms -> {
                    boolean empties = ms < systole;
                    boolean runs = switch (jet.kind().timing()) {
                        case CONTINUOUS -> true;
                        case EJECTION, LEAK -> empties;
                        default -> !empties;
                    };
                    return runs ? height : 0;
                })),
                List.of(measure("second sound after the first", Math.rint(systole), "ms")),
                "");
    }

    @Override
    public Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return switch (manoeuvre.part()) {
            case "apex-place" -> Set.of("left-ventricle-dilatation");
            case "apex-character" -> new Precordium(heart(body, probe), probe.position()).quantities();
            case "heave" -> Set.of("pulmonary-pressure", "pulmonary-valve-area", "atrial-shunt");
            default -> murmurs(body, probe).loudest().kind().quantities();
        };
    }
}
