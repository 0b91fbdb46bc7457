package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.manubrium.appearance.Appearance;

/**
 * One breath as a stethoscope hears it: the breath itself, short clicks (crackles, creaks) and tones (wheeze). Each line of
 * the examination is about one of these; what it is not about sounds as it does over a healthy lung. Levels in dB against a
 * healthy breath in.
 */
record LungSound(Onlooker onlooker, String breath, Clicks clicks, String tones) {
    private static final double SILENCE = -60;
    private static final double STEP_MS = 10;
    private static final int SAMPLES = 480;
    private static final double LEAST_OUT_MS = 1800;

    /** When clicks come, as shares of the breath in and of the breath out, and how each sounds. */
    record Clicks(List<Double> in, List<Double> out, double hertz, double ms, double decibel) {
        static final Clicks NONE = new Clicks(List.of(), List.of(), 0, 0, SILENCE);
    }

    static Appearance breath(Onlooker onlooker, String code) {
        return new LungSound(onlooker, code, Clicks.NONE, "none").appearance();
    }

    static Appearance clicks(Onlooker onlooker, Clicks clicks) {
        return new LungSound(onlooker, "vesicular", clicks, "none").appearance();
    }

    static Appearance tones(Onlooker onlooker, String code) {
        return new LungSound(onlooker, code.equals("none") ? "vesicular" : "long-expiration", Clicks.NONE, code)
                .appearance();
    }

    private Appearance appearance() {
        double in = length("in-ms");
        double pause = length("pause-ms");
        double out = Math.max(LEAST_OUT_MS, length("out-ms"));
        return new Appearance(
                "lung-sound",
                List.of(
                        new Appearance.Curve("air moves in, out is negative", "share", STEP_MS, air(in, pause, out)),
                        new Appearance.Curve("clicks", "of the loudest", STEP_MS, clicks(in, pause, out))),
                List.of(
                        measure("breath in lasts", in, "ms"),
                        measure("breath in, level", sound("in-db") + onlooker.wall(), "dB"),
                        measure("breath in, from", sound("in-low"), "Hz"),
                        measure("breath in, even up to", sound("in-flat"), "Hz"),
                        measure("breath in, up to", sound("in-high"), "Hz"),
                        measure("gap", pause, "ms"),
                        measure("breath out lasts", out, "ms"),
                        measure("breath out is heard for", length("out-ms"), "ms"),
                        measure("breath out, level", sound("out-db") + onlooker.wall(), "dB"),
                        measure("breath out, from", sound("out-low"), "Hz"),
                        measure("breath out, even up to", sound("out-flat"), "Hz"),
                        measure("breath out, up to", sound("out-high"), "Hz"),
                        measure("click pitch", clicks.hertz(), "Hz"),
                        measure("click lasts", clicks.ms(), "ms"),
                        measure("click level", clicks.decibel(), "dB"),
                        measure("tones at once", tone("tones"), ""),
                        measure("lowest tone", tone("hertz"), "Hz"),
                        measure("tones in the breath in, level", tone("in-db"), "dB"),
                        measure("tones in the breath out, level", tone("out-db"), "dB")),
                "");
    }

    private static Appearance.Measure measure(String label, double amount, String unit) {
        return new Appearance.Measure(label, Math.rint(amount) + 0.0, unit);
    }

    private double sound(String what) {
        return onlooker.constant("sound." + breath + "." + what);
    }

    private double tone(String what) {
        return onlooker.constant("wheeze." + tones + "." + what);
    }

    /** People breathe at their own pace. */
    private double length(String what) {
        return sound(what) * (1 + 0.06 * onlooker.own("breath-length"));
    }

    private static List<Double> air(double in, double pause, double out) {
        List<Double> samples = new ArrayList<>(SAMPLES);
        for (int i = 0; i < SAMPLES; i++) {
            samples.add(Math.rint(flow(i * STEP_MS, in, pause, out) * 100) / 100 + 0.0);
        }
        return List.copyOf(samples);
    }

    private static double flow(double ms, double in, double pause, double out) {
        if (ms < in) {
            return Math.sin(Math.PI * ms / in);
        }
        double after = ms - in - pause;
        return after < 0 || after > out ? 0 : -Math.sin(Math.PI * Math.sqrt(after / out));
    }

    private List<Double> clicks(double in, double pause, double out) {
        Double[] samples = new Double[SAMPLES];
        Arrays.fill(samples, 0.0);
        clicks.in().forEach(share -> put(samples, share * in));
        clicks.out().forEach(share -> put(samples, in + pause + share * out));
        return List.of(samples);
    }

    private void put(Double[] samples, double ms) {
        int at = (int) Math.floor(ms / STEP_MS);
        if (at < SAMPLES) {
            samples[at] = Math.rint((0.8 + 0.2 * onlooker.own("click-" + at)) * 100) / 100;
        }
    }
}
