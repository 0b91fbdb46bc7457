package org.manubrium.patient;

import java.util.List;
import org.manubrium.anatomy.Site;

/**
 * What a finding says in this patient.
 *
 * @param term the tabled term
 * @param ailments the names of what explains it; empty if nothing does
 * @param sites the damaged sites on its pathway
 */
public record Meaning(String term, String text, List<String> ailments, List<Site> sites) {}
