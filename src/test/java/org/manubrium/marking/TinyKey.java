package org.manubrium.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.manubrium.anatomy.SegmentSet;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.ConclusionKey;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;
import org.manubrium.marking.key.DeferralRule;
import org.manubrium.marking.key.Form;
import org.manubrium.marking.key.HarmRule;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.KeyLine.Necessity;
import org.manubrium.marking.key.KeyLine.PublishedSet;
import org.manubrium.marking.key.MeansKey;
import org.manubrium.marking.key.Origin;
import org.manubrium.marking.key.ReadingKey;
import org.manubrium.marking.key.ReadingKey.ScaleKey;
import org.manubrium.marking.key.Showing;
import org.manubrium.marking.key.SiteKey;
import org.manubrium.marking.key.SiteKey.Near;
import org.manubrium.reasoning.Weighing;

/**
 * A key made by hand: one reflex lost on one side, a height whose limit differs between two schools, two pressures taken
 * together, a toe that nobody need look at, an intimate manoeuvre.
 */
final class TinyKey {
    static final Origin SEEN = new Origin("book", "seen");
    static final Origin MEMORY = new Origin("memory", "from-memory");
    static final Weights WEIGHTS = new Weights(20, 30, 25, 25);
    private static final SiteKey NOWHERE = SiteKey.NONE;
    private static final MeansKey NOTHING = new MeansKey("", "", List.of(), SEEN);
    private static final List<String> ALL = List.of("normal", "roots", "site", "means");

    private TinyKey() {}

    /** The reflex is absent on the bad side. */
    static CompiledKey of(Side bad) {
        List<KeyLine> lines = new ArrayList<>();
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            lines.add(reflex(side, side == bad));
        }
        lines.add(height());
        lines.add(pressure("systolic", 118));
        lines.add(pressure("diastolic", 76));
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            lines.add(toe(side));
        }
        lines.add(tone());
        ConclusionKey conclusion = new ConclusionKey(
                List.of(root(bad)),
                List.of(new Diagnosis("root", "a root", List.of())),
                List.of(new Diagnosis("root", "a root", List.of()), new Diagnosis("nerve", "a nerve", List.of())),
                List.of("mri"),
                SEEN);
        return new CompiledKey(
                "tiny",
                "hash",
                List.of("oak", "elm"),
                lines,
                conclusion,
                harms(),
                deferrals(),
                List.of(),
                Weighing.NOTHING);
    }

    private static List<DeferralRule> deferrals() {
        return List.of(
                new DeferralRule("nobody", "nobody can stand by", "chaperone", true),
                new DeferralRule("not-needed", "it is not needed", "", false),
                new DeferralRule("lesson", "this is a lesson", "", true));
    }

    private static List<HarmRule> harms() {
        return List.of(
                HarmRule.asked("no-consent", "touch", List.of(), "consent", "No consent.", SEEN),
                HarmRule.asked("no-chaperone", "intimate", List.of(), "chaperone", "No chaperone.", SEEN),
                HarmRule.asked("stood", "move", List.of("standing"), "faints", "Stood up unasked.", SEEN),
                HarmRule.asked("both", "way", List.of("carotid-hands=both"), "", "Both at once.", SEEN));
    }

    private static SiteKey root(Side side) {
        String at = "root S1 " + side.word();
        return new SiteKey(
                at,
                Stream.of(at, "root L5 " + side.word())
                        .map(s -> new Near(SiteKey.words(s), s.equals(at) ? 0 : 1))
                        .toList(),
                List.of(at));
    }

    private static KeyLine reflex(Side side, boolean bad) {
        ReadingKey reading = new ReadingKey.Graded(List.of(new ScaleKey(
                "five", "Five", true, List.of("0", "1", "2", "3", "4"), List.of("2", "3"), bad ? "0" : "2")));
        return new KeyLine(
                new Item("ankle-reflex", side, ""),
                "ankle reflex",
                "ankle reflex, " + side.word(),
                "none",
                false,
                new Necessity(true, "It tells root from nerve."),
                new Showing(List.of("kneeling", "lying"), List.of("hammer=soft"), List.of("reinforcement=clench")),
                ALL,
                reading,
                forms("five", !bad, "S1", "S1-S2"),
                List.of(new PublishedSet(SegmentSet.parse("L5-S2").orElseThrow(), SEEN)),
                bad ? root(side) : NOWHERE,
                bad ? new MeansKey("arc-root", "the arc is cut at the root", List.of("arc-nerve"), SEEN) : NOTHING,
                SEEN,
                List.of());
    }

    private static KeyLine height() {
        List<Form> forms = List.of(
                new Form("oak", "", false, Double.NEGATIVE_INFINITY, 3, List.of(), MEMORY, SEEN),
                new Form("elm", "", true, Double.NEGATIVE_INFINITY, 5, List.of(), SEEN, SEEN));
        return plain(
                "neck-vein", Side.NONE, "", false, new ReadingKey.Measured(4, "cm", 1), forms, true, List.of("normal"));
    }

    private static KeyLine pressure(String place, double value) {
        return plain(
                "pressure",
                Side.NONE,
                place,
                true,
                new ReadingKey.Measured(value, "mmHg", 5),
                List.of(
                        new Form("oak", "", true, 60, 140, List.of(), SEEN, SEEN),
                        new Form("elm", "", true, 60, 140, List.of(), SEEN, SEEN)),
                false,
                List.of("normal"));
    }

    private static KeyLine toe(Side side) {
        return plain(
                "toe",
                side,
                "",
                false,
                new ReadingKey.Chosen("down", List.of("down", "up"), List.of("down")),
                forms("", true, "S1", "S1"),
                false,
                ALL);
    }

    private static KeyLine tone() {
        KeyLine line = plain(
                "anal-tone",
                Side.NONE,
                "",
                false,
                new ReadingKey.Chosen("firm", List.of("firm", "lax"), List.of("firm")),
                forms("", true, "S2-S4", "S2-S4"),
                false,
                ALL);
        return new KeyLine(
                line.item(),
                line.name(),
                line.label(),
                "intimate",
                false,
                line.necessity(),
                line.showing(),
                line.questions(),
                line.reading(),
                line.forms(),
                List.of(),
                NOWHERE,
                NOTHING,
                SEEN,
                List.of());
    }

    private static KeyLine plain(
            String manoeuvre,
            Side side,
            String place,
            boolean together,
            ReadingKey reading,
            List<Form> forms,
            boolean essential,
            List<String> questions) {
        return new KeyLine(
                new Item(manoeuvre, side, place),
                manoeuvre,
                manoeuvre,
                "none",
                together,
                new Necessity(essential, "so"),
                new Showing(List.of("kneeling", "lying"), List.of(), List.of()),
                questions,
                reading,
                forms,
                List.of(),
                NOWHERE,
                NOTHING,
                MEMORY,
                List.of());
    }

    private static List<Form> forms(String scale, boolean normal, String oak, String elm) {
        return List.of(form("oak", scale, normal, oak), form("elm", scale, normal, elm));
    }

    private static Form form(String convention, String scale, boolean normal, String roots) {
        return new Form(
                convention,
                scale,
                normal,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                List.of(SegmentSet.parse(roots).orElseThrow()),
                SEEN,
                SEEN);
    }
}
