package org.manubrium.marking;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How much each domain counts towards the total; any positive numbers, their sum is the whole.
 *
 * @param besides how much the parts of the profile count; nothing unless an educator insists
 */
public record Weights(double essential, double reading, double interpretation, double conclusion, Besides besides) {
    private static final int PARTS = 4;

    /** How much each part of the profile counts. */
    public record Besides(double thoroughness, double handling, double information, double confidence) {
        public static final Besides NOTHING = new Besides(0, 0, 0, 0);

        public Besides {
            if (!(thoroughness >= 0 && handling >= 0 && information >= 0 && confidence >= 0)) {
                throw new IllegalArgumentException("weights must be 0 or more");
            }
        }

        String text() {
            return Stream.of(thoroughness, handling, information, confidence)
                    .map(Weights::written)
                    .collect(Collectors.joining(" "));
        }
    }

    /** Weights of the domains alone. */
    public Weights(double essential, double reading, double interpretation, double conclusion) {
        this(essential, reading, interpretation, conclusion, Besides.NOTHING);
    }

    public Weights {
        if (!(essential >= 0 && reading >= 0 && interpretation >= 0 && conclusion >= 0)
                || essential + reading + interpretation + conclusion == 0) {
            throw new IllegalArgumentException("weights must be 0 or more, and not all 0");
        }
    }

    /** As {@link #text} writes it; empty if it is not. */
    public static Optional<Weights> parse(String text) {
        String[] parts = text.strip().split(" +", -1);
        boolean withBesides = parts.length == DomainName.values().length + PARTS;
        if ((parts.length != DomainName.values().length && !withBesides)
                || !Arrays.stream(parts).allMatch(Weights::isWeight)) {
            return Optional.empty();
        }
        double[] all = Arrays.stream(parts).mapToDouble(Double::parseDouble).toArray();
        Besides besides = withBesides ? new Besides(all[4], all[5], all[6], all[7]) : Besides.NOTHING;
        return Arrays.stream(all).limit(PARTS).sum() == 0
                ? Optional.empty()
                : Optional.of(new Weights(all[0], all[1], all[2], all[3], besides));
    }

    /** Whether one weight may be written so: 0 to 999, with one decimal or none. */
    public static boolean isWeight(String written) {
        return written.matches("\\d{1,3}(\\.\\d)?");
    }

    /** The numbers in the order of the domains, to one decimal; those of the profile after them if any counts. */
    public String text() {
        String domains =
                Stream.of(DomainName.values()).map(name -> written(of(name))).collect(Collectors.joining(" "));
        return besides.equals(Besides.NOTHING) ? domains : domains + " " + besides.text();
    }

    private static String written(double weight) {
        return Say.number(Math.round(weight * 10) / 10.0);
    }

    double of(DomainName domain) {
        return switch (domain) {
            case ESSENTIAL -> essential;
            case READING -> reading;
            case INTERPRETATION -> interpretation;
            case CONCLUSION -> conclusion;
        };
    }
}
