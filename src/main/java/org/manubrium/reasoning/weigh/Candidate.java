package org.manubrium.reasoning.weigh;

import java.util.List;
import org.manubrium.patient.Body;

/**
 * A diagnosis that may be true of the patient.
 *
 * @param weight how common it is, against the others
 * @param holds whether it is true
 * @param bodies the patient's body with it, fully developed; several where it can be several things
 */
public record Candidate(String id, String name, double weight, boolean holds, List<Body> bodies) {
    public Candidate {
        bodies = List.copyOf(bodies);
    }
}
