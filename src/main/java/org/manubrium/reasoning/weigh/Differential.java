package org.manubrium.reasoning.weigh;

import java.util.List;
import org.manubrium.patient.Body;

/** What a patient may have: the body as it is, and everything the case asks to be told apart. */
public record Differential(Body patient, List<Candidate> candidates) {
    public Differential {
        candidates = List.copyOf(candidates);
    }
}
