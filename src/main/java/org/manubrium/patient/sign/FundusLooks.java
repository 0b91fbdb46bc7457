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

    /** The disc is seen whole, whatever is asked of it: {@code asked} is what decides, the rest is drawn. */
    private static Look disc(String usual, List<Feature> asked) {
        List<Feature> seen = new ArrayList<>(List.of(clouded()));
        seen.add(one(asked, drawn("edge stands out by", "stages", 1, new Swelling())));
        seen.add(one(asked, drawn("paler than a usual rim by", "%", PERCENT, new Pallor())));
        seen.add(drawn("cup is so much of the height of the disc", "%", PERCENT, of("cup")));
        return new Look("optic-disc", usual, List.copyOf(seen), FundusLooks::discPaths);
    }

    private static Feature one(List<Feature> asked, Feature drawn) {
        return asked.stream()
                .filter(feature -> feature.label().equals(drawn.label()))
                .findFirst()
                .orElse(drawn);
    }

    private static List<Strand> discPaths(Body body, Side eye) {
        return List.of(media(body, eye), new Strand("disc-fibres", CranialMotor.tract(body, "disc fibres", eye)));
    }

    /** The disc as it is seen by whoever measures its cup. */
    static Look cup() {
        return disc("usual", List.of());
    }

    private static Look margin() {
        return disc(
                "sharp",
                List.of(read("edge stands out by", "stages", 1, new Swelling(), "blurred", "fundus.seen.swelling")));
    }

    private static Look colour() {
        return disc(
                "pink",
                List.of(read("paler than a usual rim by", "%", PERCENT, new Pallor(), "pale", "fundus.seen.pale")));
    }

    private static Look vessels() {
        return new Look(
                "retinal-vessels",
                "usual",
                List.of(
                        clouded(),
                        read(
                                "tufts of fine vessels",
                                "tufts",
                                1,
                                of("new-vessels"),
                                "new-vessels",
                                "fundus.seen.new-vessels"),
                        read("arteries thinner by", "%", PERCENT, of("narrow"), "threads", "fundus.seen.threads"),
                        read("veins wider by", "%", PERCENT, of("engorged"), "engorged", "fundus.seen.engorged"),
                        read(
                                "veins vanish under arteries at",
                                "crossings",
                                1,
                                of("nipping"),
                                "nipped",
                                "fundus.seen.nipping")),
                MEDIA);
    }

    private static Look macula() {
        return new Look(
                "macula",
                "usual",
                List.of(
                        clouded(),
                        read("retina whitened by", "%", PERCENT, of("milky"), "red-spot", "fundus.seen.milky"),
                        read(
                                "dark or grey over",
                                "%",
                                PERCENT,
                                of("macula-bleed"),
                                "bleed",
                                "fundus.seen.macula-bleed"),
                        read(
                                "sharp yellow specks",
                                "specks",
                                1,
                                of("macula-exudate"),
                                "exudates",
                                "fundus.seen.macula-exudate"),
                        read("soft pale dots", "dots", 1, of("drusen"), "spots", "fundus.seen.drusen")),
                MEDIA);
    }

    private static Look haemorrhages() {
        return new Look(
                "retina-red",
                "none",
                List.of(
                        clouded(),
                        read(
                                "red streaks along the fibres",
                                "streaks",
                                1,
                                of("flames"),
                                "flames",
                                "fundus.seen.flames"),
                        read("round red marks", "marks", 1, of("dots"), "dots", "fundus.seen.dots")),
                MEDIA);
    }

    private static Look patches() {
        return new Look(
                "retina-white",
                "none",
                List.of(
                        clouded(),
                        read("white patches, edges soft", "patches", 1, of("cotton"), "cotton", "fundus.seen.cotton"),
                        read("yellow specks, edges sharp", "specks", 1, of("exudate"), "hard", "fundus.seen.exudate")),
                MEDIA);
    }
}
