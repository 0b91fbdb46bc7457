package org.manubrium.patient.sign;

import static org.manubrium.patient.sign.BellySigns.belly;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.trunk.Belly;
import org.manubrium.patient.trunk.Spot;

/** What percussion and a flick find of fluid, and of a full bladder. */
final class BellyFluid {
    private BellyFluid() {}

    static Map<String, TrunkSign> all() {
        return Map.of("flank-note", flank(), "shift", shift(), "thrill", thrill(), "bladder", bladder());
    }

    private static TrunkSign flank() {
        return TrunkSign.word(
                        "belly-border",
                        Set.of("resonant"),
                        spot -> belly(spot).flankBorder() <= spot.constant("belly.border-dull") ? "dull" : "resonant")
                .shows(
                        "rings from the navel outwards",
                        "cm",
                        spot -> belly(spot).flankBorder())
                .needs("belly.fluid");
    }

    private static TrunkSign shift() {
        return TrunkSign.number("border-shift", "cm", spot -> belly(spot).borderShift(), "zero", "belly.shift-most")
                .shows(
                        "lying flat, the note stays the same from the navel for",
                        "cm",
                        spot -> belly(spot).flankBorder())
                .shows(
                        "turned away, the note stays the same from the navel for",
                        "cm",
                        spot -> belly(spot).flankBorder() + belly(spot).borderShift())
                .needs("belly.fluid");
    }

    private static TrunkSign thrill() {
        return TrunkSign.word(
                        "fluid-thrill",
                        Set.of("none"),
                        spot -> belly(spot).thrill() >= spot.constant("belly.thrill-felt") ? "felt" : "none")
                .shows("knock against the far hand", "mm", spot -> belly(spot).thrill())
                .needs("belly.fluid");
    }

    private static TrunkSign bladder() {
        return TrunkSign.number("bladder-dullness", "cm", spot -> belly(spot).bladder(), "zero", "bladder.most-cm")
                .shows("dull above the pubic bone", "cm", spot -> belly(spot).bladder())
                .along(BellyFluid::emptying)
                .needs("bladder.litres");
    }

    /** The pathways that empty the bladder, of both sides. */
    static List<Strand> emptying(Spot spot) {
        return Stream.of(Side.LEFT, Side.RIGHT)
                .flatMap(side -> TendonReflexReader.arcAndControl(spot.body(), Belly.EMPTYING, side).stream())
                .toList();
    }
}
