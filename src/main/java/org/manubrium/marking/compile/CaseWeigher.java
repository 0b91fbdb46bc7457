package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.marking.compile.CaseTruth.EssentialChoice;
import org.manubrium.reasoning.Evidence;
import org.manubrium.reasoning.Shortest;
import org.manubrium.reasoning.Shortest.Sufficient;
import org.manubrium.reasoning.Verdict;
import org.manubrium.reasoning.Verdicts;
import org.manubrium.reasoning.Weighing;
import org.manubrium.reasoning.Worth;
import org.manubrium.reasoning.plan.Planner;
import org.manubrium.reasoning.plan.Ways;
import org.manubrium.reasoning.weigh.Differential;
import org.manubrium.reasoning.weigh.Weigher;

/** Weighs the differential of a case, and says what each manoeuvre is worth in it. */
public final class CaseWeigher {
    /** How the patient lies when the student comes in. */
    private static final String START = "lying-45";

    private final Weigher weigher;

    public CaseWeigher(Weigher weigher) {
        this.weigher = weigher;
    }

    /**
     * A weighing with the shortest examination that suffices.
     *
     * @param shortest its items; none if not even everything together suffices
     */
    public record Weighed(Weighing weighing, List<Item> shortest) {
        public Weighed {
            shortest = List.copyOf(shortest);
        }
    }

    /** The weighing of a case; what its educator decided takes the place of what was worked out. */
    public Weighed weigh(CaseTruth truth) {
        Weighed weighed = weigh(truth.differential());
        Weighing weighing = weighed.weighing();
        List<Verdict> verdicts = new ArrayList<>(weighing.verdicts());
        for (EssentialChoice choice : truth.choices()) {
            verdicts.removeIf(verdict -> verdict.manoeuvre().equals(choice.manoeuvre()));
            verdicts.add(new Verdict(
                    choice.manoeuvre(),
                    choice.essential() ? Worth.ESSENTIAL : Worth.UNNEEDED,
                    weighing.bits(choice.manoeuvre()),
                    "The educator's choice: " + choice.reason()));
        }
        return new Weighed(weighing.with(verdicts), weighed.shortest());
    }

    private Weighed weigh(Differential differential) {
        Weighing weighing = weigher.weigh(differential);
        Examination examination = weigher.examination();
        Evidence evidence = new Evidence(weighing);
        Optional<Sufficient> shortest = new Shortest(evidence, new Planner(new Ways(examination)), START)
                .find(weigher.grounds().threshold());
        List<Verdict> verdicts = new Verdicts(evidence, weigher.grounds().risks())
                .of(examination.manoeuvres(), shortest.map(List::of).orElse(List.of()));
        return new Weighed(
                weighing.with(verdicts),
                shortest.map(Sufficient::columns).orElse(List.of()).stream()
                        .map(column -> evidence.columns().get(column).item())
                        .toList());
    }
}
