package org.manubrium.marking;

/** How much each domain counts towards the total; any positive numbers, their sum is the whole. */
public record Weights(double essential, double reading, double interpretation, double conclusion) {
    public Weights {
        if (!(essential >= 0 && reading >= 0 && interpretation >= 0 && conclusion >= 0)
                || essential + reading + interpretation + conclusion == 0) {
            throw new IllegalArgumentException("weights must be 0 or more, and not all 0");
        }
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
