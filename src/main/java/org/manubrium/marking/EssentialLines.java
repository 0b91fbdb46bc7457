package org.manubrium.marking;

import java.util.List;
import java.util.Optional;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.credit.Credit;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.KeyLine;

/** Whether each essential item was examined in a way that could show its sign. */
final class EssentialLines {
    private EssentialLines() {}

    static List<Line> of(CompiledKey key, Attempt attempt, Checked checked) {
        Deferrals deferrals = new Deferrals(key, attempt);
        return key.essentials().stream()
                .map(line -> line(line, attempt, deferrals.of(line)).on(checked.standing(line.behind())))
                .toList();
    }

    private static Line line(KeyLine line, Attempt attempt, Optional<Deferrals.Put> put) {
        List<Logged> probes = attempt.probes(line);
        Credit credit = credit(line, probes, put);
        return new Line(
                "essential/" + line.item(),
                DomainName.ESSENTIAL,
                "Examine: " + line.label(),
                probes.isEmpty()
                        ? put.map(p -> "put off, because " + p.reason()).orElse("")
                        : "examined",
                line.necessity().reason(),
                credit.amount(),
                credit.why(),
                line.origin());
    }

    private static Credit credit(KeyLine line, List<Logged> probes, Optional<Deferrals.Put> put) {
        boolean shown = probes.stream()
                .anyMatch(p -> line.showing().couldShow(p.position(), ((Event.Probed) p.event()).technique()));
        if (shown) {
            return Credit.full("Examined in a way that could show the sign.");
        }
        if (put.isPresent()) {
            String why = put.get().why();
            return put.get().sound()
                    ? Credit.full(why + " That handles it well; nothing was read, and nothing is earned for reading.")
                    : Credit.none(why);
        }
        return probes.isEmpty()
                ? Credit.none("It was not examined.")
                : Credit.none("Examined, but not in a position or with a technique that could show the sign.");
    }
}
