package org.manubrium.casefile;

import java.util.List;

/**
 * What should stand at the end.
 *
 * @param diagnosis ids of the conditions accepted as the diagnosis; empty for those of the case
 * @param next ids of the next steps that are right
 */
public record Conclusion(List<String> diagnosis, List<String> next) {}
