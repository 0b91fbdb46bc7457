package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.Feature.drawn;
import static org.manubrium.patient.sign.Feature.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/** The back of the eye, part by part, and the glow of it in the pupil. */
final class FundusLooks {
    private static final double PERCENT = 100;
    private static final Look.Paths MEDIA = (body, eye) -> List.of(media(body, eye));

    /** A swollen disc is in focus with so many dioptres more than the retina, for each stage. */
    private static final double DIOPTRES = 1;

    /** What can be seen, the most telling of each part first. */
    private static final List<Feature> SEEN = List.of(
            read("edge stands out by", "dioptres", DIOPTRES, new Swelling(), "blurred", "fundus.seen.swelling"),
            read("paler than a usual rim by", "%", PERCENT, new Pallor(), "pale", "fundus.seen.pale"),
            read("tufts of fine vessels", "tufts", 1, of("new-vessels"), "new-vessels", "fundus.seen.new-vessels"),
            read("arteries thinner by", "%", PERCENT, of("narrow"), "threads", "fundus.seen.threads"),
            read("veins wider by", "%", PERCENT, of("engorged"), "engorged", "fundus.seen.engorged"),
            read("veins vanish under arteries at", "crossings", 1, of("nipping"), "nipped", "fundus.seen.nipping"),
            read("retina whitened by", "%", PERCENT, of("milky"), "red-spot", "fundus.seen.milky"),
            read("macula dark or grey over", "%", PERCENT, of("macula-bleed"), "bleed", "fundus.seen.macula-bleed"),
            read(
                    "sharp yellow specks at the macula",
                    "specks",
                    1,
                    of("macula-exudate"),
                    "exudates",
                    "fundus.seen.macula-exudate"),
            read("soft pale dots at the macula", "dots", 1, of("drusen"), "spots", "fundus.seen.drusen"),
            read("red streaks along the fibres", "streaks", 1, of("flames"), "flames", "fundus.seen.flames"),
            read("round red marks", "marks", 1, of("dots"), "dots", "fundus.seen.dots"),
            read("white patches, edges soft", "patches", 1, of("cotton"), "cotton", "fundus.seen.cotton"),
            read("yellow specks, edges sharp", "specks", 1, of("exudate"), "hard", "fundus.seen.exudate"));

    private FundusLooks() {}

    static Map<String, Look> all() {
        return Map.of(
                "red-reflex", reflex(),
                "disc-margin", margin(),
                "disc-colour", colour(),
                "retinal-vessels", vessels(),
                "macula", macula(),
                "retinal-haemorrhages", haemorrhages(),
                "retinal-white-patches", patches());
    }

    private static Strand media(Body body, Side eye) {
        return new Strand("media", new Sight(body, eye).media());
    }

    private static double haze(Body body, Side eye) {
        return 1 - body.conduction(new Sight(body, eye).media());
    }

    private static Feature clouded() {
        return read("view clouded", "%", PERCENT, FundusLooks::haze, "no-view", "fundus.no-view")
                .hiding();
    }

    private static Feature.Tabled of(String kind) {
        return new Feature.Tabled("eye", kind);
    }

    private static Look reflex() {
        return new Look(
                "red-reflex",
                "bright",
                List.of(
                        read("light stopped", "%", PERCENT, FundusLooks::haze, "dark", "reflex.seen.dark"),
                        read("shadows over", "%", PERCENT, FundusLooks::haze, "dim", "reflex.seen.dim")),
                MEDIA);
    }

    /** Pressure in the skull swells a disc as inflammation does. */
    private record Swelling() implements Feature.Amount {
        @Override
        public double of(Body body, Side eye) {
            double above =
                    body.quantity("intracranial-pressure") - body.physiology().constant("fundus.pressure-from");
            double pressed = Math.max(0, above / body.physiology().constant("fundus.pressure-per-stage"));
            return Math.min(5, FundusLooks.of("swelling").of(body, eye) + pressed);
        }

        @Override
        public List<String> quantities(Side eye) {
            return List.of("eye." + eye.word() + ".swelling", "intracranial-pressure");
        }
    }

    /** A disc pales some weeks after its fibres were lost. */
    private record Pallor() implements Feature.Amount {
        @Override
        public double of(Body body, Side eye) {
            double days = body.physiology().constant("fundus.pallor-days");
            double lost = Wasting.lost(body, CranialMotor.tract(body, "disc fibres", eye), days);
            return Math.max(lost, FundusLooks.of("pallor").of(body, eye));
        }

        @Override
        public List<String> quantities(Side eye) {
            return FundusLooks.of("pallor").quantities(eye);
        }
    }

    /**
     * The back of the eye is seen whole, whatever is asked of it: only the features with these levels decide what is read,
     * the rest is drawn.
     */
    private static Look look(String sign, String usual, Look.Paths paths, String... levels) {
        List<String> asked = List.of(levels);
        List<Feature> seen = new ArrayList<>(List.of(clouded()));
        SEEN.forEach(feature ->
                seen.add(asked.contains(feature.code().orElseThrow().level()) ? feature : feature.onlyDrawn()));
        seen.add(drawn("cup is so much of the height of the disc", "%", PERCENT, of("cup")));
        return new Look(sign, usual, List.copyOf(seen), paths);
    }

    private static List<Strand> discPaths(Body body, Side eye) {
        return List.of(media(body, eye), new Strand("disc-fibres", CranialMotor.tract(body, "disc fibres", eye)));
    }

    /** The disc as it is seen by whoever measures its cup. */
    static Look cup() {
        return look("optic-disc", "usual", FundusLooks::discPaths);
    }

    private static Look margin() {
        return look("optic-disc", "sharp", FundusLooks::discPaths, "blurred");
    }

    private static Look colour() {
        return look("optic-disc", "pink", FundusLooks::discPaths, "pale");
    }

    private static Look vessels() {
        return look("retinal-vessels", "usual", MEDIA, "new-vessels", "threads", "engorged", "nipped");
    }

    private static Look macula() {
        return look("macula", "usual", MEDIA, "red-spot", "bleed", "exudates", "spots");
    }

    private static Look haemorrhages() {
        return look("retina-red", "none", MEDIA, "flames", "dots");
    }

    private static Look patches() {
        return look("retina-white", "none", MEDIA, "cotton", "hard");
    }
}
