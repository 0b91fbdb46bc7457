package org.manubrium.school.mark;

import java.util.List;
import org.manubrium.school.bedside.Known;
import org.manubrium.store.MarkChange;

/**
 * A marked attempt as its student may see it.
 *
 * @param sheet the mark sheet as it was stored, JSON
 * @param convention the name of the teaching convention it was marked under
 * @param timeline what was done, in order
 * @param changes every mark it was given, the first one first; more than one if it was marked again
 */
public record Debrief(
        long attempt,
        Known patient,
        String sheet,
        String convention,
        List<Step> timeline,
        List<MarkChange> changes,
        Lessons lessons) {
    public Debrief {
        timeline = List.copyOf(timeline);
        changes = List.copyOf(changes);
    }

    /** One thing done, at so many simulated seconds. */
    public record Step(int bedsideSeconds, String text) {}
}
