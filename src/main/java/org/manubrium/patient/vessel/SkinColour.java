package org.manubrium.patient.vessel;

import java.util.Map;
import java.util.TreeMap;
import org.manubrium.patient.Body;

/**
 * The colour of one tissue as the shares of red, green and blue light that it throws back, 0..1. Melanin, blood that holds
 * oxygen, blood that has given it up, and bilirubin each swallow their part of each light, so that what one hides is hidden
 * from the eye too.
 */
public record SkinColour(double red, double green, double blue) {

    public static SkinColour of(Body body, String tissue, Supply supply) {
        double blood = amount(body, tissue, "blood")
                * supply.blood()
                * body.quantity("blood.haemoglobin")
                / constant(body, "colour.haemoglobin");
        double arterial = body.quantity("blood.saturation") / 100;
        return mixed(body, tissue, blood, arterial - supply.taken() / 2, body.quantity("skin.bilirubin"));
    }

    /** The same tissue of the same skin with the blood of an average healthy person. */
    public static SkinColour usual(Body body, String tissue) {
        return mixed(
                body,
                tissue,
                amount(body, tissue, "blood"),
                constant(body, "colour.saturation") / 100 - constant(body, "colour.taken") / 2,
                constant(body, "colour.bilirubin"));
    }

    /**
     * The blood in a tissue.
     *
     * @param blood how much of it, against what health has there
     * @param taken the share of its oxygen that it has given up by the end of the capillaries
     */
    public record Supply(double blood, double taken) {
        /** Blood that flows as fast as this stays as bright as that. */
        public static Supply flowing(Body body, double blood, double flow) {
            double slow = constant(body, "colour.taken-slow") * Math.max(0, 1 - flow);
            return new Supply(blood, constant(body, "colour.taken") + slow);
        }
    }

    private static SkinColour mixed(Body body, String tissue, double blood, double bright, double bilirubin) {
        double oxygen = Math.max(0, bright);
        double melanin = amount(body, tissue, "melanin") * body.person().tone().melanin();
        double yellow = amount(body, tissue, "bilirubin") * bilirubin / 100;
        double[] light = new double[3];
        String[] bands = {"red", "green", "blue"};
        for (int i = 0; i < bands.length; i++) {
            double swallowed = melanin * constant(body, "colour.melanin." + bands[i])
                    + blood * oxygen * constant(body, "colour.oxygen." + bands[i])
                    + blood * (1 - oxygen) * constant(body, "colour.spent." + bands[i])
                    + yellow * constant(body, "colour.bilirubin." + bands[i]);
            light[i] = amount(body, tissue, bands[i]) * Math.exp(-swallowed);
        }
        return new SkinColour(light[0], light[1], light[2]);
    }

    /**
     * What the eye makes of it beside the usual colour of the same tissue: pale, red, blue or yellow, each against the least
     * difference that is noticed; from 1 on it is plain.
     */
    public Map<String, Double> against(SkinColour usual, Body body) {
        double greener = green - usual.green;
        Map<String, Double> plain = new TreeMap<>();
        plain.put("pale", greener / constant(body, "colour.notice-pale"));
        plain.put("red", -greener / constant(body, "colour.notice-red"));
        plain.put("blue", (usual.red - red) / constant(body, "colour.notice-blue"));
        plain.put("yellow", (greener - (blue - usual.blue)) / constant(body, "colour.notice-yellow"));
        return plain;
    }

    private static double amount(Body body, String tissue, String of) {
        return constant(body, "tissue." + tissue + "." + of);
    }

    private static double constant(Body body, String name) {
        return body.physiology().constant(name);
    }
}
