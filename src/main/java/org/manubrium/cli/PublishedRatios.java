package org.manubrium.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.reasoning.Belief;
import org.manubrium.reasoning.Column;
import org.manubrium.reasoning.Evidence;
import org.manubrium.reasoning.Fit;
import org.manubrium.reasoning.odds.LikelihoodRatio;
import org.manubrium.reasoning.odds.People;
import org.manubrium.reasoning.weigh.Calibration;
import org.manubrium.tables.Reference;

/** What was published of a step, in numbers of people. It stands beside the posterior and is no part of it. */
final class PublishedRatios {
    private final Evidence evidence;
    private final Reference known;
    private final Vocabulary.Cited cited;

    PublishedRatios(Evidence evidence, Reference known) {
        this.evidence = evidence;
        this.known = known;
        this.cited = new Vocabulary.Cited(known);
    }

    void tell(ObjectNode object, Belief before, Column step, String seen) {
        String reads = known.examination()
                .manoeuvre(step.item().manoeuvre())
                .map(Manoeuvre::reads)
                .orElse("");
        ArrayNode published = Json.array();
        for (Fit fit : evidence.weighing().fits()) {
            for (Calibration calibration : known.reasoning().grounds().calibrations()) {
                if (calibration.ratio().equals(fit.ratio())
                        && calibration.reads().equals(reads)) {
                    said(published, fit, before, List.of(seen.split("; ", -1)), calibration);
                }
            }
        }
        if (!published.isEmpty()) {
            object.set("published", published);
        }
    }

    private void said(ArrayNode published, Fit fit, Belief before, List<String> seen, Calibration calibration) {
        boolean present = seen.stream().anyMatch(calibration.shows()::contains);
        double chance = 0;
        for (int h = 0; h < evidence.possible().size(); h++) {
            chance += evidence.possible().get(h).id().equals(fit.possible()) ? before.chances()[h] : 0;
        }
        for (LikelihoodRatio ratio : known.reasoning().ratios()) {
            String words = ratio.id().equals(fit.ratio()) ? People.said(ratio, chance, present) : "";
            if (!words.isEmpty()) {
                published
                        .addObject()
                        .put("said", words)
                        .put("source", cited.citations(ratio.source()))
                        .put("confidence", ratio.confidence());
            }
        }
    }
}
