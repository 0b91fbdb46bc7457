package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.manubrium.examination.Examination;
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

    /** The weighing of a case; what its educator decided takes the place of what was worked out. */
    public Weighing weigh(CaseTruth truth) {
        Weighing weighing = weigh(truth.differential());
        List<Verdict> verdicts = new ArrayList<>(weighing.verdicts());
        for (EssentialChoice choice : truth.choices()) {
            verdicts.removeIf(verdict -> verdict.manoeuvre().equals(choice.manoeuvre()));
            verdicts.add(new Verdict(
                    choice.manoeuvre(),
                    choice.essential() ? Worth.ESSENTIAL : Worth.UNNEEDED,
                    bits(weighing, choice.manoeuvre()),
                    "The educator's choice: " + choice.reason()));
        }
        return weighing.with(verdicts);
    }

    private static double bits(Weighing weighing, String manoeuvre) {
        return weighing.verdicts().stream()
                .filter(verdict -> verdict.manoeuvre().equals(manoeuvre))
                .mapToDouble(Verdict::bits)
                .findFirst()
                .orElse(0);
    }

    private Weighing weigh(Differential differential) {
        Weighing weighing = weigher.weigh(differential);
        Examination examination = weigher.examination();
        Evidence evidence = new Evidence(weighing);
        Optional<Sufficient> shortest = new Shortest(evidence, new Planner(new Ways(examination)), START)
                .find(weigher.grounds().threshold());
        return weighing.with(new Verdicts(evidence, weigher.grounds().risks())
                .of(examination.manoeuvres(), shortest.map(List::of).orElse(List.of())));
    }
}
