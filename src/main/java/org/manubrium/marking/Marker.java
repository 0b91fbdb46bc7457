package org.manubrium.marking;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.marking.MarkSheet.Beside;
import org.manubrium.marking.MarkSheet.Domain;
import org.manubrium.marking.MarkSheet.Handled;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;

/** Marks an attempt. Pure: the same key, convention, weights and events always give the same sheet. */
public final class Marker {
    private final CompiledKey key;
    private final Touched touched;

    /** Marks any number of attempts by one key. */
    public Marker(CompiledKey key) {
        this.key = key;
        this.touched = new Touched(key.lines());
    }

    public CompiledKey key() {
        return key;
    }

    /** As in practice, where everything scores. */
    public static MarkSheet mark(CompiledKey key, String convention, Weights weights, List<Logged> events) {
        return new Marker(key).mark(convention, weights, Checked.PRACTICE, Measured.NOTHING, events);
    }

    /**
     * @param measured what the profile measures; counts only as far as the weights let it
     * @param checked how far what nobody here has opened may be relied on
     * @param convention the teaching convention in force, one of the key's
     * @param events as they were taken, in order
     */
    public MarkSheet mark(String convention, Weights weights, Checked checked, Measured measured, List<Logged> events) {
        Attempt attempt = new Attempt(events);
        // nothing is marked on the many lines that neither the case turns on nor the student touched
        CompiledKey met = key.with(touched.lines(attempt.met()));
        Map<DomainName, List<Line>> lines = Stream.of(
                        EssentialLines.of(met, attempt, checked),
                        new ReadingLines(convention, attempt, checked).of(met),
                        new InterpretationLines(convention, attempt, checked).of(met),
                        new ConclusionLines(attempt).of(key.conclusion()))
                .flatMap(List::stream)
                .collect(Collectors.groupingBy(Line::domain));
        List<Domain> domains = Stream.of(DomainName.values())
                .map(name -> Domain.of(name, weights.of(name), lines.getOrDefault(name, List.of())))
                .toList();
        List<Handled> handling = Order.of(key, attempt);
        List<Beside> besides = Besides.of(key, attempt, weights.besides(), measured, handling);
        return new MarkSheet(
                key.caseId(),
                convention,
                total(domains, besides),
                domains,
                Harms.of(met, attempt),
                handling,
                besides,
                Notes.of(key, attempt, domains));
    }

    /** Where no domain scores there is no mark, whatever the profile says. */
    private static double total(List<Domain> domains, List<Beside> besides) {
        List<Domain> marked = domains.stream().filter(Domain::scored).toList();
        double whole = marked.stream().mapToDouble(Domain::weight).sum();
        double part = marked.stream().mapToDouble(d -> d.weight() * d.percent()).sum();
        double more = besides.stream().mapToDouble(Beside::weight).sum();
        double earned =
                besides.stream().mapToDouble(b -> b.weight() * b.percent()).sum();
        return whole == 0 ? 0 : (part + earned) / (whole + more);
    }
}
