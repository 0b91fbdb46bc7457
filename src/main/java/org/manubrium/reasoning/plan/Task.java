package org.manubrium.reasoning.plan;

import java.util.List;

/**
 * Something to be done in a plan.
 *
 * @param positions where it can be done; one is enough
 * @param seconds how long it takes, wherever it is done
 */
public record Task(String name, List<String> positions, int seconds) {
    public Task {
        positions = List.copyOf(positions);
    }
}
