package org.manubrium.patient.sign;

import java.util.function.DoubleUnaryOperator;
import org.manubrium.patient.heart.ExtraSounds;
import org.manubrium.patient.heart.Heart;
import org.manubrium.patient.heart.Jet;
import org.manubrium.patient.heart.JetKind;
import org.manubrium.patient.heart.Jets;
import org.manubrium.patient.heart.Stethoscope;
import org.manubrium.patient.heart.Thud;
import org.manubrium.patient.heart.ValveSounds;

/**
 * One beat as it is heard.
 *
 * @param start the moment of its first sound, ms from the start of the clip
 * @param length until the next first sound, ms
 * @param chance a number of this beat, 0..1, for what differs from beat to beat without a pattern
 */
record HeartBeat(Stethoscope stethoscope, double start, double length, double chance) {
    /** A jet so faint at its source stands below the last digit of any sample, wherever it is carried to, dB. */
    private static final double LOST = -90;

    private Heart heart() {
        return stethoscope.heart();
    }

    private double number(String name) {
        return heart().number(name);
    }

    private double here(String sound) {
        return number("sound." + sound + "." + stethoscope.place());
    }

    /** Whether both its sounds fall into a clip of so many milliseconds; half a beat would be heard as another rhythm. */
    boolean within(double clip) {
        ValveSounds valves = new ValveSounds(heart());
        return start >= 0 && start + Math.max(valves.aorticAt(), valves.pulmonaryAt()) < clip;
    }

    void write(HeartClip.Samples into) {
        thumps(into.thumps());
        ExtraSounds extra = new ExtraSounds(heart());
        extra.low().forEach(thud -> put(into.low(), thud));
        extra.sharp().forEach(thud -> put(into.sharp(), thud));
        ValveSounds valves = new ValveSounds(heart());
        double aortic = valves.aorticAt();
        double pulmonary = valves.pulmonaryAt();
        Jets.of(heart()).stream()
                .filter(jet -> jet.level() > LOST)
                .forEach(jet -> noise(into, jet, ofTheRight(jet) ? pulmonary : aortic));
        scratch(into.scratch());
    }

    private void thumps(double[] samples) {
        ValveSounds valves = new ValveSounds(heart());
        double first = valves.first(lead()) + uneven();
        double late = number("s1.tricuspid-after") + number("s1.tricuspid-bundle") * heart().of("right-bundle-delay");
        put(samples, 0, first + here("first"));
        put(samples, late, first + here("tricuspid-first"));
        put(samples, valves.aorticAt(), valves.aortic() + here("aortic-second"));
        put(samples, valves.pulmonaryAt(), valves.pulmonary() + here("pulmonary-second"));
    }

    /** By how many milliseconds the atria lead; atria that beat apart come at any time. */
    private double lead() {
        boolean apart = heart().of("atrioventricular-dissociation") >= number("s1.apart");
        return apart ? chance * number("s1.apart-most") : heart().of("pr-interval");
    }

    private double uneven() {
        boolean idle = heart().of("atrial-contraction") < number("s1.idle");
        return idle ? (2 * chance - 1) * number("s1.idle-spread") : 0;
    }

    private void put(double[] samples, Thud thud) {
        put(samples, thud.ms(), stethoscope.hears(thud));
    }

    private void put(double[] samples, double ms, double decibel) {
        int at = (int) Math.floor((start + ms) / HeartClip.FINE_MS);
        if (at >= 0 && at < samples.length) {
            samples[at] = Math.max(samples[at], height(decibel));
        }
    }

    private static double height(double decibel) {
        return Math.pow(10, decibel / 20);
    }

    private static boolean ofTheRight(Jet jet) {
        return jet.kind() == JetKind.PULMONARY_LEAK || jet.kind() == JetKind.PULMONARY_OUT;
    }

    private void noise(HeartClip.Samples into, Jet jet, double closes) {
        double height = height(stethoscope.hears(jet));
        switch (jet.kind().timing()) {
            case EJECTION, LEAK ->
                draw(into.emptying(), jet.from() * closes, jet.to() * closes, x -> height * systolic(jet, x));
            case AFTER_SECOND ->
                draw(into.filling(), closes, closes + jet.to() * (length - closes), x -> height * (1 - x));
            case FILLING -> filling(into.filling(), jet, closes, height);
            case CONTINUOUS -> {
                draw(into.emptying(), 0, closes, x -> height * (0.3 + 0.7 * x));
                draw(into.filling(), closes, length, x -> height * (1 - 0.85 * x));
            }
        }
    }

    private static double systolic(Jet jet, double x) {
        if (jet.kind().timing() == JetKind.Timing.LEAK) {
            return jet.peak() >= 1 ? 0.3 + 0.7 * x : Math.min(1, Math.min(x, 1 - x) * 12);
        }
        return x < jet.peak() ? x / jet.peak() : (1 - x) / (1 - jet.peak());
    }

    /**
     * A rumble fades from the opening of the valve; atria that beat make it grow again before the next first sound. It is as
     * loud as it is said to be where it is loudest.
     */
    private void filling(double[] samples, Jet jet, double closes, double height) {
        double opens = closes + new ExtraSounds(heart()).snapAfter() + number("filling.after-snap");
        double lasts = jet.to() * (length - opens);
        double kick = number("filling.kick") * heart().atrialKick();
        double whole = height / Math.max(1, kick);
        draw(samples, opens, opens + lasts, x -> whole * (1 - 0.8 * x));
        draw(samples, length - number("filling.kick-ms"), length, x -> whole * kick * (0.3 + 0.7 * x));
    }

    /** A rough pericardium scratches as the ventricles empty, as they fill and as the atria beat. */
    private void scratch(double[] samples) {
        double rough =
                heart().of("pericardial-roughness") * (1 - number("rub.parted") * heart().of("pericardial-fluid"));
        if (rough <= 0) {
            return;
        }
        double level = number("rub.level") + number("rub." + stethoscope.place());
        double height = rough * height(level + stethoscope.posture("rub"));
        double closes = new ValveSounds(heart()).aorticAt();
        double lasts = number("rub.ms");
        draw(samples, number("rub.first"), number("rub.first") + lasts, x -> height * (1 - x * x));
        draw(
                samples,
                closes + number("rub.second"),
                closes + number("rub.second") + lasts,
                x -> height * (1 - x) * 0.8);
        double kick = heart().atrialKick();
        draw(samples, length - number("rub.third"), length - number("rub.third") + lasts, x -> height * kick * 0.7);
    }

    /** Adds a noise between two moments of the beat; noises add as powers do. */
    private void draw(double[] samples, double from, double to, DoubleUnaryOperator height) {
        int first = (int) Math.max(0, Math.ceil((start + from) / HeartClip.COARSE_MS));
        for (int i = first; i < samples.length && i * HeartClip.COARSE_MS < start + to; i++) {
            double x = (i * HeartClip.COARSE_MS - start - from) / (to - from);
            samples[i] = Math.hypot(samples[i], Math.max(0, height.applyAsDouble(x)));
        }
    }
}
