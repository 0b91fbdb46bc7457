package org.manubrium.reasoning.plan;

import java.util.List;

/**
 * An order of examination.
 *
 * @param stops the positions in order, the one at the start first, each with what is done there
 * @param seconds everything that is done and every move
 * @param changes how often the patient is moved
 */
public record Plan(List<Stop> stops, int seconds, int changes) {
    public Plan {
        stops = List.copyOf(stops);
    }

    /** One position of the patient and what is done in it. */
    public record Stop(String position, List<Task> tasks) {
        public Stop {
            tasks = List.copyOf(tasks);
        }
    }
}
