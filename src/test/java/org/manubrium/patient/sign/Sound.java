package org.manubrium.patient.sign;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Base64;

/** A sound rendered to memory, one sample every 1/{@link #RATE} s, and what can be measured on it. */
final class Sound {
    static final int RATE = 44_100;

    private final double[] samples;

    private Sound(double[] samples) {
        this.samples = samples;
    }

    static Sound decoded(String base64) {
        ByteBuffer bytes = ByteBuffer.wrap(Base64.getDecoder().decode(base64)).order(ByteOrder.LITTLE_ENDIAN);
        double[] samples = new double[bytes.remaining() / Float.BYTES];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = bytes.getFloat();
        }
        return new Sound(samples);
    }

    Sound minus(Sound other) {
        double[] rest = new double[samples.length];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = samples[i] - other.samples[i];
        }
        return new Sound(rest);
    }

    /** Mean square between two moments, s. */
    double power(double from, double to) {
        double sum = 0;
        int first = at(from);
        int last = at(to);
        for (int i = first; i < last; i++) {
            sum += samples[i] * samples[i];
        }
        return sum / (last - first);
    }

    double decibel(double from, double to) {
        return 10 * Math.log10(power(from, to) + 1e-12);
    }

    double energy(double from, double to) {
        return power(from, to) * (to - from);
    }

    /** Power at one pitch between two moments. */
    double power(double hertz, double from, double to) {
        double re = 0;
        double im = 0;
        for (int i = at(from); i < at(to); i++) {
            double turn = 2 * Math.PI * hertz * i / RATE;
            re += samples[i] * Math.cos(turn);
            im += samples[i] * Math.sin(turn);
        }
        return re * re + im * im;
    }

    /** The pitch that has most power between two moments, Hz, within two limits. */
    double pitch(double from, double to, double lowest, double highest) {
        double best = lowest;
        double most = 0;
        for (double hertz = lowest; hertz <= highest; hertz += 5) {
            double power = power(hertz, from, to);
            if (power > most) {
                most = power;
                best = hertz;
            }
        }
        return best;
    }

    /** The share of the power that lies above a pitch, by differences of neighbouring bands 50 Hz apart. */
    double shareAbove(double hertz, double from, double to) {
        double above = 0;
        double all = 0;
        for (double f = 75; f < 2000; f += 25) {
            double power = power(f, from, to);
            all += power;
            above += f > hertz ? power : 0;
        }
        return above / all;
    }

    /** Seconds from the start until the sound stays 20 dB below its loudest 5 ms. */
    double fallsBy20Decibel() {
        double window = 0.005;
        double loudest = 0;
        double last = 0;
        for (double t = 0; t + window < samples.length / (double) RATE; t += window) {
            loudest = Math.max(loudest, power(t, t + window));
        }
        for (double t = 0; t + window < samples.length / (double) RATE; t += window) {
            if (power(t, t + window) > loudest / 100) {
                last = t + window;
            }
        }
        return last;
    }

    private int at(double seconds) {
        return Math.min(samples.length, (int) Math.round(seconds * RATE));
    }
}
