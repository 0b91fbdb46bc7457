package org.manubrium.patient.trunk;

import java.util.List;
import java.util.stream.Stream;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Phase;
import org.manubrium.patient.lung.LungQuantity;
import org.manubrium.patient.lung.Lungs;

/** The belly of one body: where fluid, gas and organs bring its borders. Lengths in centimetres, volumes in litres. */
public record Belly(Body body) {
    /** The arc by which the bladder empties. */
    public static final String EMPTYING = "bladder-emptying";

    public static final List<String> REGIONS = List.of(
            "right.upper",
            "right.middle",
            "right.lower",
            "middle.upper",
            "middle.navel",
            "middle.lower",
            "left.upper",
            "left.middle",
            "left.lower");

    private double of(String quantity) {
        return body.quantity(quantity);
    }

    private double constant(String name) {
        return body.physiology().constant(name);
    }

    private double own(String trait) {
        return body.person().variation().of(trait);
    }

    /** Thickness of skin, fat and muscle in front, mm. */
    public double wall() {
        return of("belly.wall");
    }

    public double fluid() {
        return of("belly.fluid");
    }

    public double gas() {
        return of("belly.gas");
    }

    /** The greatest soreness of the lining of the belly anywhere, 0..1. */
    public double sorestLining() {
        return REGIONS.stream()
                .mapToDouble(region -> of("belly." + region + ".lining"))
                .max()
                .orElse(0);
    }

    /** How far from the navel the note in the flank turns dull, the patient flat on the back, cm. */
    public double flankBorder() {
        double pool = constant("belly.border-per-root-litre") * Math.sqrt(fluid());
        return Math.max(1, constant("belly.border") + own("flank") - pool);
    }

    /** How far that border wanders towards the side turned down, cm. */
    public double borderShift() {
        double free = Math.max(0, fluid() - constant("belly.shift-from"));
        return constant("belly.shift-per-root-litre") * Math.sqrt(free) + 0.3 * (1 + own("bowel-moves"));
    }

    /** How far a flick at one flank moves the hand on the other, mm. */
    public double thrill() {
        return Math.max(0, constant("belly.thrill-per-litre") * (fluid() - constant("belly.thrill-from")));
    }

    /** How far the fuller belly stands above the costal margin, mm. */
    public double height() {
        return constant("belly.height") + 0.5 * wall() + 20 * gas() + 9 * fluid();
    }

    /** How far the flanks stand out beyond the ribs, mm. */
    public double flanks() {
        return 0.2 * wall() + constant("belly.flank-per-litre") * fluid();
    }

    /** How far the full bladder rises above the pubic bone, cm: what is held back, and what no sacral arc empties. */
    public double bladder() {
        double kept = of("bladder.litres") + constant("bladder.kept-litres") * unemptied();
        double over = Math.max(0, kept - constant("bladder.hidden-litres"));
        return constant("bladder.cm-per-cube-root-litre") * Math.cbrt(over);
    }

    /** 0 as long as the arc of one side serves by half, 1 where neither does anything. */
    private double unemptied() {
        double better = Stream.of(Side.LEFT, Side.RIGHT)
                .mapToDouble(this::emptying)
                .max()
                .orElse(0);
        double spare = constant("bladder.spare");
        return Math.max(0, spare - better) / spare;
    }

    private double emptying(Side side) {
        double shocked = body.lost(body.anatomy().control(EMPTYING, side), Phase.SHOCK);
        return body.conduction(body.anatomy().arc(EMPTYING, side)) * (1 - shocked);
    }

    /** How far the lower edge of the liver comes below the costal margin on a full breath in, whether felt or not, cm. */
    public double liverEdge() {
        double pushed = constant("liver.pushed") * new Lungs(body).mean(Side.NONE, LungQuantity.TRAPPED);
        return of("liver.span") - constant("liver.covered") + pushed + constant("liver.breath");
    }

    /** Whether a hand meets that edge: it comes far enough, is not soft as fat, and no pool of fluid lies before it. */
    public boolean liverFelt() {
        boolean firm = of("liver.firm") >= constant("liver.firm-enough") || of("liver.tender") > 0.3;
        double fat = Math.max(0, wall() - constant("liver.wall-usual")) * constant("liver.hidden-per-wall");
        double reach = fat + (firm ? constant("liver.felt-from") : constant("liver.soft-felt-from"));
        return liverEdge() >= reach && fluid() < constant("belly.hides-litres") && rigid() < 1;
    }

    /** How far the spleen comes below the left costal margin on a full breath in, cm; 0 where no hand meets it. */
    public double spleenEdge() {
        double hidden = constant("spleen.hidden") + constant("spleen.hidden-per-wall") * (wall() - 25);
        double below = of("spleen.length") - hidden;
        return below < 0.5 || fluid() >= constant("belly.hides-litres") || rigid() >= 1 ? 0 : below;
    }

    /** The pulsing width above the navel between two fingers, cm; 0 where no hand meets it. */
    public double aortaFelt() {
        double width = of("aorta.width");
        double deep = wall() + 60 * of("belly.middle.upper.lining") + 6 * fluid();
        return width * 10 >= constant("aorta.felt-share") * deep ? width + 0.3 : 0;
    }

    /** How far the lining stiffens the wall over the liver and spleen, 1 so that nothing behind it is felt. */
    private double rigid() {
        return sorestLining() / constant("belly.rigid");
    }
}
