package org.manubrium.reasoning.weigh;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.manubrium.examination.Level;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Reading;
import org.manubrium.examination.Scale;
import org.manubrium.patient.Finding;
import org.manubrium.patient.sign.Signs;

/** Puts findings into the outcomes that an examiner can tell apart. */
final class Coding {
    /** Numbers are told apart in at most so many steps. */
    private static final int STEPS = 5;

    private final Signs signs;

    Coding(Signs signs) {
        this.signs = signs;
    }

    /** The outcomes of one item: the codes of its scale; for a measurement, ranges no narrower than twice its tolerance. */
    Outcomes of(Manoeuvre manoeuvre, List<Finding> findings) {
        boolean numbers = findings.stream().anyMatch(Finding.Measured.class::isInstance);
        return numbers ? ranges(manoeuvre, findings) : codes(manoeuvre, findings);
    }

    private Outcomes codes(Manoeuvre manoeuvre, List<Finding> findings) {
        Set<String> names = new LinkedHashSet<>();
        boolean ordered = false;
        if (!manoeuvre.scale().isBlank()) {
            Scale scale = signs.examination().scale(manoeuvre.scale());
            ordered = scale.ordered();
            scale.levels().stream().map(Level::code).forEach(names::add);
        }
        List<String> shown = findings.stream().map(f -> code(manoeuvre, f)).toList();
        names.addAll(shown);
        List<String> all = List.copyOf(names);
        return new Outcomes(all, shown.stream().mapToInt(all::indexOf).toArray(), apart(all.size(), ordered));
    }

    private String code(Manoeuvre manoeuvre, Finding finding) {
        Reading reading = signs.reading(manoeuvre, finding);
        return reading instanceof Reading.Grade grade ? grade.grade() : ((Reading.Seen) reading).seen();
    }

    private static int[][] apart(int size, boolean ordered) {
        int[][] apart = new int[size][size];
        for (int a = 0; a < size; a++) {
            for (int b = 0; b < size; b++) {
                apart[a][b] = ordered ? Math.abs(a - b) : a == b ? 0 : 1;
            }
        }
        return apart;
    }

    private static Outcomes ranges(Manoeuvre manoeuvre, List<Finding> findings) {
        double[] values = findings.stream()
                .filter(Finding.Measured.class::isInstance)
                .mapToDouble(f -> ((Finding.Measured) f).value())
                .sorted()
                .toArray();
        double least = values[0];
        double span = values[values.length - 1] - least;
        double width = Math.max(2 * manoeuvre.tolerance(), span / STEPS);
        int steps = width == 0 ? 1 : Math.max(1, (int) Math.ceil(span / width - 1e-9));
        List<String> names = new ArrayList<>(IntStream.range(0, steps)
                .mapToObj(i -> range(least + i * width, least + (i + 1) * width, width))
                .toList());
        int[] shown = new int[findings.size()];
        for (int i = 0; i < shown.length; i++) {
            if (findings.get(i) instanceof Finding.Measured measured) {
                shown[i] = width == 0 ? 0 : Math.min(steps - 1, (int) ((measured.value() - least) / width));
            } else {
                String word = findings.get(i) instanceof Finding.Seen seen ? seen.code() : "other";
                names.add(word);
                shown[i] = names.indexOf(word);
            }
        }
        List<String> all = names.stream().distinct().toList();
        return new Outcomes(all, shown, apart(all.size(), all.size() == steps));
    }

    /** Written with as many places as the steps need. */
    private static String range(double from, double to, double width) {
        int places = width == 0 ? 1 : Math.max(0, 1 - (int) Math.floor(Math.log10(width)));
        String form = "%." + places + "f";
        return String.format(Locale.ROOT, form + " to " + form, from, to);
    }

    /** Several places that one look shows at once: an outcome is what all of them show together. */
    static Outcomes together(List<Outcomes> places) {
        int bodies = places.get(0).shown().length;
        List<List<Integer>> kinds = new ArrayList<>();
        int[] shown = new int[bodies];
        for (int b = 0; b < bodies; b++) {
            int body = b;
            List<Integer> all = places.stream().map(p -> p.shown()[body]).toList();
            if (!kinds.contains(all)) {
                kinds.add(all);
            }
            shown[b] = kinds.indexOf(all);
        }
        int[][] apart = new int[kinds.size()][kinds.size()];
        for (int a = 0; a < apart.length; a++) {
            for (int b = 0; b < apart.length; b++) {
                for (int p = 0; p < places.size(); p++) {
                    apart[a][b] += places.get(p)
                            .apart()[kinds.get(a).get(p)][kinds.get(b).get(p)];
                }
            }
        }
        List<String> names = kinds.stream()
                .map(kind -> String.join(
                        "; ",
                        IntStream.range(0, places.size())
                                .mapToObj(p -> places.get(p).names().get(kind.get(p)))
                                .toList()))
                .toList();
        return new Outcomes(names, shown, apart);
    }
}
