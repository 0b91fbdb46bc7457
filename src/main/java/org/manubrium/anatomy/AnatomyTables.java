package org.manubrium.anatomy;

import java.util.List;
import java.util.Map;

/** The rows from which the body is built; {@code trunks} names the trunk of the brachial plexus that each root joins. */
public record AnatomyTables(
        List<Structure> structures,
        List<Region> regions,
        List<SiteName> siteNames,
        List<TractStep> tractSteps,
        List<Station> stations,
        Map<Segment, String> trunks,
        List<RootShare> rootShares,
        List<Muscle> muscles,
        List<Movement> movements,
        List<Arc> arcs,
        List<SkinPoint> points,
        List<LimbPoint> limbPoints,
        List<Modality> modalities) {}
