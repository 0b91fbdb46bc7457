package org.manubrium.marking;

import java.util.List;
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
        return key.essentials().stream()
                .map(line -> line(line, attempt).on(checked.standing(line.behind())))
                .toList();
    }

    private static Line line(KeyLine line, Attempt attempt) {
        List<Logged> probes = attempt.probes(line);
        Credit credit = credit(line, probes);
        return new Line(
                "essential/" + line.item(),
                DomainName.ESSENTIAL,
                "Examine: " + line.label(),
                probes.isEmpty() ? "" : "examined",
                line.necessity().reason(),
                credit.amount(),
                credit.why(),
                line.origin());
    }

    private static Credit credit(KeyLine line, List<Logged> probes) {
        if (probes.isEmpty()) {
            return Credit.none("It was not examined.");
        }
        boolean shown = probes.stream()
                .anyMatch(p -> line.showing().couldShow(p.position(), ((Event.Probed) p.event()).technique()));
        return shown
                ? Credit.full("Examined in a way that could show the sign.")
                : Credit.none("Examined, but not in a position or with a technique that could show the sign.");
    }
}
