package org.manubrium.reasoning;

import java.util.Comparator;
import java.util.List;

/**
 * How short no sufficient examination can be. The odds of the truth must rise from what they are to what is enough. One step
 * multiplies them by no more than the largest chance of its outcome in a body of the truth over the smallest in any other
 * body; so the quickest way to gain so much, with part of a step allowed and no move counted, is not longer than any
 * examination that suffices.
 */
final class Bound {
    private final Evidence evidence;

    Bound(Evidence evidence) {
        this.evidence = evidence;
    }

    private record Gain(double most, int seconds) {
        double perSecond() {
            return most / Math.max(1, seconds);
        }
    }

    int seconds(List<Integer> columns, double threshold) {
        double now = evidence.start().chanceOfTruth();
        double wanted = Math.log(threshold / (1 - threshold)) - Math.log(now / (1 - now));
        List<Gain> gains = columns.stream()
                .map(this::gain)
                .sorted(Comparator.comparingDouble(Gain::perSecond).reversed())
                .toList();
        double seconds = 0;
        for (Gain gain : gains) {
            if (wanted <= 0) {
                break;
            }
            seconds += gain.seconds() * Math.min(1, wanted / Math.max(1e-9, gain.most()));
            wanted -= gain.most();
        }
        return (int) Math.ceil(seconds - 1e-9);
    }

    private Gain gain(int column) {
        Column step = evidence.columns().get(column);
        double[][] chances = evidence.chances(column);
        double largest = 0;
        double smallest = 1;
        for (int b = 0; b < evidence.owner.length; b++) {
            double chance = chances[evidence.shown[column][b]][step.found()];
            if (evidence.possible().get(evidence.owner[b]).holds()) {
                largest = Math.max(largest, chance);
            } else {
                smallest = Math.min(smallest, chance);
            }
        }
        return new Gain(Math.max(0, Math.log(largest / smallest)), step.seconds());
    }
}
