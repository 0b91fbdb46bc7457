package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;

/** One half of a face at rest: what its muscles hold up hangs as they fail. */
record FaceAtRest(Body body, Side side) {

    List<Appearance.Measure> measures() {
        return List.of(
                measure("brow hangs by", number("face.rest.brow") * slack("brow")),
                measure("lids open at rest by", lids()),
                measure("fold beside the mouth is deep by", number("face.rest.fold") * own() * (1 - slack("teeth"))),
                measure("corner of the mouth hangs by", number("face.rest.mouth") * slack("teeth")));
    }

    /** Millimetres between the lids; the lower one sags with the muscle that shuts them. */
    double lids() {
        return rounded(LidReader.opening(body, side) + number("face.rest.lower-lid") * slack("eye-closure"));
    }

    /** What a muscle lacks of the strength from which on nothing is seen, 0..1. */
    private double slack(String part) {
        return 1 - Math.min(1, CranialMotor.strength(body, part, side) / number("face.full"));
    }

    private double own() {
        return 1 + number("face.rest.own") * body.person().variation().of("fold", side);
    }

    private Appearance.Measure measure(String label, double mm) {
        return new Appearance.Measure(side.word() + " " + label, rounded(mm), "mm");
    }

    private static double rounded(double amount) {
        return Math.round(amount * 10) / 10.0;
    }

    private double number(String name) {
        return body.physiology().constant(name);
    }
}
