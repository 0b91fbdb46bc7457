package org.manubrium.marking.compile;

import java.util.List;
import java.util.Optional;
import org.manubrium.examination.Examination;
import org.manubrium.reasoning.Evidence;
import org.manubrium.reasoning.Shortest;
import org.manubrium.reasoning.Shortest.Sufficient;
import org.manubrium.reasoning.Verdicts;
import org.manubrium.reasoning.Weighing;
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

    public Weighing weigh(Differential differential) {
        Weighing weighing = weigher.weigh(differential);
        Examination examination = weigher.examination();
        Evidence evidence = new Evidence(weighing);
        Optional<Sufficient> shortest = new Shortest(evidence, new Planner(new Ways(examination)), START)
                .find(weigher.grounds().threshold());
        return weighing.with(new Verdicts(evidence, weigher.grounds().risks())
                .of(examination.manoeuvres(), shortest.map(List::of).orElse(List.of())));
    }
}
