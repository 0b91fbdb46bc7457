package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Physiology;

/**
 * What the examiner does to a pair of pupils: the light they have rested in, and what follows. Told by the manoeuvre and
 * its technique, never by the patient.
 */
record PupilPlan(Spell before, List<Spell> spells, List<Appearance.Measure> marks) {

    static PupilPlan of(Physiology numbers, Manoeuvre manoeuvre, Probe probe) {
        Side eye = probe.item().side();
        return switch (manoeuvre.part()) {
            case "size-light" -> steady(numbers.constant(light(probe)));
            case "size-dark" -> steady(0);
            case "light-direct" -> torch(numbers, eye);
            case "light-consensual" -> torch(numbers, eye.opposite());
            case "near" -> near(numbers);
            case "swing" -> swing(numbers, probe.choice("torch", "right-first"));
            case "dark-lag" -> darkness(numbers);
            default -> throw new IllegalArgumentException("no pupil test is called \"" + manoeuvre.part() + "\"");
        };
    }

    private static String light(Probe probe) {
        return switch (probe.choice("pupil-light", "even")) {
            case "dim" -> "pupil.light.dim";
            case "bright" -> "pupil.light.bright";
            default -> "pupil.light.even";
        };
    }

    private static PupilPlan steady(double lux) {
        return new PupilPlan(
                Spell.even(1, lux), List.of(Spell.even(1, lux)), List.of(mark("light on both eyes", lux, "lux")));
    }

    private static PupilPlan torch(Physiology numbers, Side eye) {
        double room = numbers.constant("pupil.light.test");
        double on = numbers.constant("pupil.torch-seconds");
        return new PupilPlan(
                Spell.even(1, room),
                List.of(lit(numbers, eye, on), Spell.even(on, room)),
                List.of(mark("torch on the " + eye.word() + " eye from", 0, "s"), mark("torch away from", on, "s")));
    }

    private static Spell lit(Physiology numbers, Side eye, double seconds) {
        double room = numbers.constant("pupil.light.test");
        double torch = numbers.constant("pupil.light.torch");
        return new Spell(seconds, eye == Side.RIGHT ? torch : room, eye == Side.LEFT ? torch : room, false);
    }

    private static PupilPlan near(Physiology numbers) {
        double lux = numbers.constant("pupil.light.even");
        double on = numbers.constant("pupil.near-seconds");
        double off = numbers.constant("pupil.far-seconds");
        return new PupilPlan(
                Spell.even(1, lux),
                List.of(new Spell(on, lux, lux, true), new Spell(off, lux, lux, false)),
                List.of(mark("looks at the finger from", 0, "s"), mark("looks into the distance from", on, "s")));
    }

    private static PupilPlan swing(Physiology numbers, String first) {
        double dwell = numbers.constant("pupil.swing-seconds");
        double gap = numbers.constant("pupil.swing-gap");
        Side eye = first.equals("left-first") ? Side.LEFT : Side.RIGHT;
        List<Spell> spells = new ArrayList<>();
        List<Appearance.Measure> marks = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            marks.add(mark("torch on the " + eye.word() + " eye from", i * (dwell + gap), "s"));
            spells.add(lit(numbers, eye, dwell));
            spells.add(Spell.even(gap, numbers.constant("pupil.light.test")));
            eye = eye.opposite();
        }
        return new PupilPlan(
                Spell.even(1, numbers.constant("pupil.light.test")), List.copyOf(spells), List.copyOf(marks));
    }

    private static PupilPlan darkness(Physiology numbers) {
        return new PupilPlan(
                Spell.even(1, numbers.constant("pupil.light.even")),
                List.of(Spell.even(numbers.constant("pupil.lag-seconds"), 0)),
                List.of(mark("lights out from", 0, "s")));
    }

    private static Appearance.Measure mark(String label, double amount, String unit) {
        return new Appearance.Measure(label, amount, unit);
    }
}
