package org.manubrium.patient.sign;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.heart.Heart;
import org.manubrium.patient.heart.Load;
import org.manubrium.patient.heart.Stethoscope;

/**
 * So many seconds of one heart through one stethoscope, sampled: how high each kind of sound stands at each moment, 1 being a
 * healthy first sound at the apex.
 *
 * @param breath how far the patient has breathed in at a moment, 0..1
 * @param later by how many seconds the beats come later than the heart's own
 */
record HeartClip(Stethoscope stethoscope, double seconds, DoubleUnaryOperator breath, double later) {
    static final double FINE_MS = 5;
    static final double COARSE_MS = 10;

    private static final double GOLDEN = 0.6180339887498949;

    HeartClip(Stethoscope stethoscope, double seconds, DoubleUnaryOperator breath) {
        this(stethoscope, seconds, breath, 0);
    }

    /** The same heart, its beats moved so that the clip ends where a beat ends. */
    HeartClip untilABeatEnds() {
        double next =
                starts().stream().filter(start -> start >= seconds).findFirst().orElseThrow();
        return new HeartClip(stethoscope, seconds, breath, later + seconds - next);
    }

    /** The same heart, its beats moved so that the clip begins with a first sound. */
    HeartClip fromAFirstSound() {
        return new HeartClip(stethoscope, seconds, breath, later + FINE_MS / 1000 - starts().get(1));
    }

    /** The samples of one clip, or of several on end. */
    @SuppressWarnings("ArrayRecordComponent") // filled sample by sample, then read once; never compared
    record Samples(
            double[] thumps, double[] low, double[] sharp, double[] emptying, double[] filling, double[] scratch) {
        static Samples of(double seconds) {
            int fine = (int) Math.round(seconds * 1000 / FINE_MS);
            int coarse = (int) Math.round(seconds * 1000 / COARSE_MS);
            return new Samples(
                    new double[fine],
                    new double[fine],
                    new double[fine],
                    new double[coarse],
                    new double[coarse],
                    new double[coarse]);
        }

        /** The same, all of it louder or fainter by so many dB. */
        Samples louder(double decibel) {
            double times = Math.pow(10, decibel / 20);
            return new Samples(
                    times(thumps, times),
                    times(low, times),
                    times(sharp, times),
                    times(emptying, times),
                    times(filling, times),
                    times(scratch, times));
        }

        private static double[] times(double[] samples, double times) {
            return Arrays.stream(samples).map(height -> height * times).toArray();
        }

        Samples then(Samples next) {
            return new Samples(
                    joined(thumps, next.thumps),
                    joined(low, next.low),
                    joined(sharp, next.sharp),
                    joined(emptying, next.emptying),
                    joined(filling, next.filling),
                    joined(scratch, next.scratch));
        }

        private static double[] joined(double[] first, double[] second) {
            double[] all = Arrays.copyOf(first, first.length + second.length);
            System.arraycopy(second, 0, all, first.length, second.length);
            return all;
        }

        List<Appearance.Curve> curves() {
            return List.of(
                    curve("thumps", FINE_MS, thumps),
                    curve("low thuds", FINE_MS, low),
                    curve("snaps", FINE_MS, sharp),
                    curve("noise while the heart empties", COARSE_MS, emptying),
                    curve("noise while it fills", COARSE_MS, filling),
                    curve("scratches", COARSE_MS, scratch));
        }

        private static Appearance.Curve curve(String name, double stepMs, double[] samples) {
            List<Double> rounded = Arrays.stream(samples)
                    .map(height -> Math.rint(height * 1000) / 1000)
                    .boxed()
                    .toList();
            return new Appearance.Curve(name, "of a first sound", stepMs, rounded);
        }
    }

    Samples samples() {
        Samples into = Samples.of(seconds);
        Heart heart = stethoscope.heart();
        List<Double> starts = starts();
        for (int i = 1; i + 1 < starts.size(); i++) {
            double before = starts.get(i) - starts.get(i - 1);
            double filled = Math.sqrt(before * heart.rate() / 60);
            Load breathed = Load.of(heart.body().physiology(), "breath-in").share(breath.applyAsDouble(starts.get(i)));
            Load load = heart.load().and(breathed).and(new Load(filled, filled, 1, 1, 1));
            Stethoscope now = new Stethoscope(
                    heart.under(load),
                    stethoscope.place(),
                    stethoscope.piece(),
                    stethoscope.position(),
                    stethoscope.heldOut());
            double next = (starts.get(i + 1) - starts.get(i)) * 1000;
            HeartBeat beat = new HeartBeat(now, starts.get(i) * 1000, next, i * GOLDEN % 1);
            if (beat.within(seconds * 1000)) {
                beat.write(into);
            }
        }
        return into;
    }

    /** When each first sound comes, in seconds, one of them before the clip. */
    private List<Double> starts() {
        Heart heart = stethoscope.heart();
        double lead = heart.number("upstroke.after") / 1000;
        return Beats.of(heart.body(), heart.rate(), seconds + 1).upstrokes().stream()
                .map(upstroke -> upstroke - lead + later)
                .toList();
    }

    /** How far breathed in, every tenth of a second. */
    static Appearance.Curve breath(double seconds, DoubleUnaryOperator breath) {
        List<Double> samples = IntStream.range(0, (int) Math.round(seconds * 10))
                .mapToObj(i -> Math.rint(breath.applyAsDouble(i / 10.0) * 100) / 100)
                .toList();
        return new Appearance.Curve("breath, in is up", "share", 100, samples);
    }
}
