package org.manubrium.school.mark;

import java.util.List;

/**
 * What a marked attempt teaches beside its lines.
 *
 * @param said where the student put the lesion, in the student's words; blank if nowhere
 * @param pathways drawn from the stimulus on
 * @param apart findings that would have been others if the lesion lay where the student said
 * @param elsewhere what other schools teach of what was asked here
 * @param drill what to practise, the worst first
 */
public record Lessons(
        String said, List<Drawn> pathways, List<String> apart, List<Taught> elsewhere, List<String> drill) {
    public static final Lessons NONE = new Lessons("", List.of(), List.of(), List.of(), List.of());

    public Lessons {
        pathways = List.copyOf(pathways);
        apart = List.copyOf(apart);
        elsewhere = List.copyOf(elsewhere);
        drill = List.copyOf(drill);
    }

    /** The pathway of one sign. */
    public record Drawn(String sign, List<Station> stations) {
        public Drawn {
            stations = List.copyOf(stations);
        }
    }

    /** One place on it: whether the lesion is there, and whether the student said so. */
    public record Station(String place, boolean lesion, boolean yours) {}

    /** What one line teaches under the cohort's convention, and under others. */
    public record Taught(String asked, String here, String elsewhere) {}
}
