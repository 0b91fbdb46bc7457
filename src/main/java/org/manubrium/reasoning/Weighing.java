package org.manubrium.reasoning;

import java.util.List;

/**
 * Everything that is needed to say what an examination of one patient tells, without the model of the body.
 *
 * @param owners for each body the place of its diagnosis in {@code possible}
 * @param weights for each body its share of its diagnosis, 0..1
 * @param columns the steps that can tell one diagnosis from another, in table order
 * @param kernels tables of misreadings, row by row: the chance of reading an outcome where another is there
 * @param verdicts what each manoeuvre is worth here; one that is not named is unneeded
 * @param fits how closely the bodies show what was published
 */
public record Weighing(
        List<Possible> possible,
        List<Integer> owners,
        List<Double> weights,
        List<Column> columns,
        List<List<Double>> kernels,
        List<Verdict> verdicts,
        List<Fit> fits) {
    /** A case without anything to be weighed. */
    public static final Weighing NOTHING =
            new Weighing(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public Weighing {
        possible = List.copyOf(possible);
        owners = List.copyOf(owners);
        weights = List.copyOf(weights);
        columns = List.copyOf(columns);
        kernels = kernels.stream().map(List::copyOf).toList();
        verdicts = List.copyOf(verdicts);
        fits = List.copyOf(fits);
    }

    /** The same with verdicts. */
    public Weighing with(List<Verdict> others) {
        return new Weighing(possible, owners, weights, columns, kernels, others, fits);
    }

    /** What a manoeuvre is worth in this case. */
    public Worth worth(String manoeuvre) {
        return verdicts.stream()
                .filter(verdict -> verdict.manoeuvre().equals(manoeuvre))
                .map(Verdict::worth)
                .findFirst()
                .orElse(Worth.UNNEEDED);
    }

    /** The most that one step of a manoeuvre tells by itself; 0 for one without a verdict. */
    public double bits(String manoeuvre) {
        return verdicts.stream()
                .filter(verdict -> verdict.manoeuvre().equals(manoeuvre))
                .mapToDouble(Verdict::bits)
                .findFirst()
                .orElse(0);
    }
}
