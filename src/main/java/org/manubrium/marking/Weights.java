package org.manubrium.marking;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How much each domain counts towards the total; any positive numbers, their sum is the whole. */
public record Weights(double essential, double reading, double interpretation, double conclusion) {
    public Weights {
        if (!(essential >= 0 && reading >= 0 && interpretation >= 0 && conclusion >= 0)
                || essential + reading + interpretation + conclusion == 0) {
            throw new IllegalArgumentException("weights must be 0 or more, and not all 0");
        }
    }

    /** As {@link #text} writes it; empty if it is not. */
    public static Optional<Weights> parse(String text) {
        String[] parts = text.strip().split(" +", -1);
        if (parts.length != DomainName.values().length
                || !Arrays.stream(parts).allMatch(part -> part.matches("\\d{1,3}(\\.\\d)?"))) {
            return Optional.empty();
        }
        double[] all = Arrays.stream(parts).mapToDouble(Double::parseDouble).toArray();
        return Arrays.stream(all).sum() == 0
                ? Optional.empty()
                : Optional.of(new Weights(all[0], all[1], all[2], all[3]));
    }

    /** The four numbers in the order of the domains, to one decimal. */
    public String text() {
        return Stream.of(DomainName.values())
                .map(name -> Say.number(Math.round(of(name) * 10) / 10.0))
                .collect(Collectors.joining(" "));
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
