package org.manubrium.tables;

import java.util.List;
import org.manubrium.reasoning.odds.LikelihoodRatio;
import org.manubrium.reasoning.weigh.Grounds;

/** The rows by which cases are weighed, and the likelihood ratios that were published. */
public record ReasoningTables(Grounds grounds, List<LikelihoodRatio> ratios, PractisedTime practised) {}
