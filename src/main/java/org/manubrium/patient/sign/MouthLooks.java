package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.Feature.drawn;
import static org.manubrium.patient.sign.Feature.read;

import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;

/** The mouth: its lining, the tongue, the teeth. */
final class MouthLooks {
    private static final double PERCENT = 100;

    private MouthLooks() {}

    static Map<String, Look> all() {
        return Map.of("mouth", lining(), "tongue-surface", surface(), "teeth", teeth(), "half-tongue", half());
    }

    private static Look lining() {
        return new Look(
                "mouth-lining",
                "clear",
                List.of(
                        read(
                                "surface under white, loose",
                                "%",
                                PERCENT,
                                of("thrush"),
                                "wipes-off",
                                "mouth.seen.thrush"),
                        read("white, held fast, across", "mm", 1, of("patch"), "fixed-patch", "mouth.seen.patch"),
                        read("raw, across", "mm", 1, of("sore"), "sore", "mouth.seen.sore"),
                        read("spatula sticks", "%", PERCENT, of("dry"), "dry", "mouth.seen.dry")));
    }

    private static Look surface() {
        return new Look(
                "tongue-surface",
                "usual",
                List.of(
                        read("without papillae", "%", PERCENT, of("smooth"), "smooth", "mouth.seen.smooth"),
                        read("under fur", "%", PERCENT, of("coat"), "coated", "mouth.seen.coat")));
    }

    private static Look teeth() {
        return new Look(
                "teeth",
                "sound",
                List.of(
                        read(
                                "teeth with a hole",
                                "teeth",
                                1,
                                whole(of("teeth", "decay")),
                                "decayed",
                                "teeth.seen.decay"),
                        read("edge of the gum swollen", "%", PERCENT, of("teeth", "gums"), "gums", "teeth.seen.gums"),
                        drawn("gaps", "teeth", 1, whole(of("teeth", "missing")))));
    }

    /** Teeth are counted: what is read is what can be counted on the drawing. */
    private static Feature.Amount whole(Feature.Amount counted) {
        return new Feature.Amount() {
            @Override
            public double of(Body body, Side side) {
                return Math.round(counted.of(body, side));
            }

            @Override
            public List<String> quantities(Side side) {
                return counted.quantities(side);
            }
        };
    }

    private static Look half() {
        return new Look(
                "half-tongue",
                "full",
                List.of(
                        read("furrow of this half", "mm", 1, MouthLooks::furrow, "wasted", "wasting.seen"),
                        read("twitches", "a minute", 1, MouthLooks::quivers, "quivering", "wasting.seen")),
                (body, side) -> List.of(new Strand("tongue-denervated", nerve(body, side))));
    }

    /** Millimetres by which a half without its nerve has sunk. */
    static double furrow(Body body, Side side) {
        double days = body.physiology().constant("wasting.days");
        return body.physiology().constant("wasting.depth") * Wasting.lost(body, nerve(body, side), days);
    }

    private static double quivers(Body body, Side side) {
        double days = body.physiology().constant("wasting.quiver-days");
        return body.physiology().constant("wasting.quivers") * Wasting.lost(body, nerve(body, side), days);
    }

    private static Pathway nerve(Body body, Side side) {
        return CranialMotor.tract(body, "tongue denervated", side);
    }

    private static Feature.Tabled of(String kind) {
        return of("mouth", kind);
    }

    private static Feature.Tabled of(String owner, String kind) {
        return new Feature.Tabled(owner, kind);
    }
}
