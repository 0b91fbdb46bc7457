package org.manubrium.patient.sign;

import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Phase;

/** What a limb lacks, system by system; each answer 0..1. */
record LimbState(Body body, String area, Side side) {
    static LimbState arm(Body body, Side side) {
        return new LimbState(body, "arm", side);
    }

    static LimbState leg(Body body, Side side) {
        return new LimbState(body, "leg", side);
    }

    static double constant(Body body, String name) {
        return body.physiology().constant(name);
    }

    private Segment level() {
        return area.equals("arm") ? Segment.C7 : Segment.L4;
    }

    Pathway steeringPath() {
        return body.anatomy().tract("steering", side, level(), area);
    }

    Pathway drivePath() {
        return body.anatomy().tract("movement drive", side, level(), area);
    }

    Pathway brakePath() {
        return body.anatomy().tract("movement brake", side, level(), area);
    }

    Pathway positionPath() {
        return body.anatomy().position(area, side);
    }

    double unsteered() {
        return body.lost(steeringPath(), Phase.LOSS);
    }

    double undriven() {
        return body.lost(drivePath(), Phase.LOSS);
    }

    double unbraked() {
        return body.lost(brakePath(), Phase.LOSS);
    }

    double unfelt() {
        return body.lost(positionPath(), Phase.LOSS);
    }

    /** Power of a movement when the patient is asked for it. */
    double power(String movement) {
        return passed(movement) * Attention.kept(body, movement, side);
    }

    /** Power of a movement that comes by itself. */
    double passed(String movement) {
        return body.conduction(body.anatomy().motor(movement, side));
    }

    double upperLost(String movement) {
        return body.lost(body.anatomy().upperMotor(movement, side), Phase.LOSS);
    }

    double released(String arc) {
        return body.lost(body.anatomy().control(arc, side), Phase.RELEASE);
    }

    double shocked(String arc) {
        return body.lost(body.anatomy().control(arc, side), Phase.SHOCK);
    }

    double arc(String arc) {
        return body.conduction(body.anatomy().arc(arc, side));
    }

    boolean most(double amount) {
        return amount >= constant(body, "limb.plain");
    }

    Strand steering() {
        return new Strand("steering", steeringPath());
    }

    Strand drive() {
        return new Strand("movement-drive", drivePath());
    }

    Strand brake() {
        return new Strand("movement-brake", brakePath());
    }

    Strand position() {
        return new Strand("position", positionPath());
    }

    Strand upper(String movement) {
        return new Strand("upper-motor", body.anatomy().upperMotor(movement, side));
    }

    Strand lower(String movement) {
        return new Strand("lower-motor", body.anatomy().lowerMotor(movement, side));
    }
}
