package org.manubrium.patient.sign;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/**
 * The top of the venous column over time as it is seen in the neck, in millimetres above the sternal angle.
 *
 * @param shift by how many centimetres something moves the column's mean at each moment
 */
record VenousTrace(Body body, double angle, double seconds, double stepMs, DoubleUnaryOperator shift) {
    private static final String ABOVE = "cm above the sternal angle";

    Appearance.Curve column() {
        VenousColumn column = VenousColumn.of(body);
        DoubleUnaryOperator wave = VenousWave.of(body).over(beats());
        double mean = times().map(wave).average().orElseThrow();
        double through = seenThrough() / 10;
        return curve("column", "mm", t -> {
            double standing = column.height(angle) + shift.applyAsDouble(t);
            double top = standing + through * (wave.applyAsDouble(t) - mean);
            return 10 * column.seen(lifted(column, standing, top) ? top : standing, angle);
        });
    }

    /** A vein that stands no higher than the clavicle has fallen in, and only a tall wave is seen to lift it. */
    private boolean lifted(VenousColumn column, double standing, double top) {
        double clavicle = column.clavicle(angle);
        return standing > clavicle || top >= clavicle + body.physiology().constant("neck-vein.lifts");
    }

    /** How much of the movement of the vein a thicker wall than the usual lets be seen, 0..1. */
    private double seenThrough() {
        double usual = body.physiology().quantity("chest.wall").normal();
        double over = Math.max(0, body.quantity("chest.wall") - usual);
        return Math.max(0, 1 - body.physiology().constant("neck-vein.hidden-per-mm") * over);
    }

    /** The movement of the skin over the artery on the other side of the neck. */
    Appearance.Curve carotid() {
        Beats beats = beats();
        return curve("carotid", "mm", beats::pulse);
    }

    Appearance.Curve curve(String name, String unit, DoubleUnaryOperator amount) {
        List<Double> samples = times().map(amount)
                .map(x -> Math.round(x * 100) / 100.0)
                .boxed()
                .toList();
        return new Appearance.Curve(name, unit, stepMs, samples);
    }

    List<Appearance.Measure> marks() {
        VenousColumn column = VenousColumn.of(body);
        return List.of(
                new Appearance.Measure("head of the bed", angle, "degrees"),
                new Appearance.Measure("clavicle", tenth(column.clavicle(angle)), ABOVE),
                new Appearance.Measure("jaw", tenth(column.jaw(angle)), ABOVE));
    }

    private static double tenth(double centimetres) {
        return Math.round(centimetres * 10) / 10.0;
    }

    private Beats beats() {
        return Beats.of(body, Circulation.lying(body).rate(), seconds);
    }

    private java.util.stream.DoubleStream times() {
        return IntStream.range(0, (int) Math.round(seconds * 1000 / stepMs)).mapToDouble(i -> i * stepMs / 1000);
    }
}
