package org.manubrium.anatomy;

import java.util.List;
import java.util.Optional;

/**
 * Another way in which clinicians say a site: what it means, and the segments, level and sides that are meant when none are
 * said. Several rows of one saying mean all of them together.
 *
 * @param said the words without side and segment; "NAME at LEVEL" if it is one level that has another name
 */
public record SiteName(
        String said,
        String meant,
        List<Segment> segments,
        Optional<String> level,
        List<Side> sides,
        String source,
        String confidence) {}
