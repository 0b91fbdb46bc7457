package org.manubrium.tables;

import java.util.List;
import java.util.Set;
import org.manubrium.marking.Weights;
import org.manubrium.marking.compile.RelatedTerm;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.key.HarmRule;

/**
 * The rows from which keys are compiled and attempts are marked; {@code weights} are those that hold unless others
 * are set; {@code hurting} is what patients say when it hurts.
 */
public record MarkingTables(
        Conventions conventions,
        List<RelatedTerm> related,
        List<HarmRule> harms,
        Weights weights,
        Set<String> hurting) {}
