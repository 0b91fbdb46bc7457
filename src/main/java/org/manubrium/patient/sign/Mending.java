package org.manubrium.patient.sign;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/**
 * Finds what a finding is owed to where one disease hurts several things: that without which the finding would be nearest
 * to health. A knee jerk that is brisk though feeling is lost too is owed to descending control, an ankle jerk that is gone
 * though control is lost too is owed to its arc.
 */
final class Mending {
    private static final double SAME = 1e-9;

    private final Body body;
    private final Manoeuvre manoeuvre;
    private final Probe probe;
    private final SignReader reader;
    private final Finding finding;
    private final Finding healthy;

    /** @param healthy what the same person would show in health */
    Mending(Body body, Manoeuvre manoeuvre, Probe probe, SignReader reader, Finding finding, Finding healthy) {
        this.body = body;
        this.manoeuvre = manoeuvre;
        this.probe = probe;
        this.reader = reader;
        this.finding = finding;
        this.healthy = healthy;
    }

    /** First the strands, or quantities, to which the finding is owed most; then of these the divisions. */
    List<Hurt> owed(List<Hurt> all) {
        List<Hurt> parts = most(Hurt.together(all));
        return parts.stream()
                .flatMap(part -> most(all.stream()
                                .filter(hurt -> hurt.part().equals(part.part()))
                                .toList())
                        .stream())
                .toList();
    }

    /** Where no single one changes the finding, those that stop most of their ways. */
    private List<Hurt> most(List<Hurt> all) {
        if (all.size() < 2) {
            return all;
        }
        List<Hurt> changing = most(all, this::gain);
        return changing.isEmpty() ? most(all, hurt -> hurt.taken(body) + 2 * SAME) : changing;
    }

    private static List<Hurt> most(List<Hurt> all, ToDoubleFunction<Hurt> amount) {
        double[] amounts = all.stream().mapToDouble(amount).toArray();
        double most = IntStream.range(0, amounts.length)
                .mapToDouble(i -> amounts[i])
                .max()
                .orElse(0);
        return IntStream.range(0, amounts.length)
                .filter(i -> most > SAME && amounts[i] >= most - SAME)
                .mapToObj(all::get)
                .toList();
    }

    /** How far mending it moves the finding the way to the healthy one; a word moves half or all the way. */
    private double gain(Hurt hurt) {
        Finding mended = reader.find(hurt.mendedIn(body), manoeuvre, probe);
        double way = amount(healthy) - amount(finding);
        if (way != 0) {
            return Math.max(0, (amount(mended) - amount(finding)) / way);
        }
        return mended.equals(finding) ? 0 : mended.equals(healthy) ? 1 : 0.5;
    }

    private static double amount(Finding finding) {
        return finding instanceof Finding.Graded graded
                ? graded.amount()
                : finding instanceof Finding.Measured measured ? measured.value() : 0;
    }
}
