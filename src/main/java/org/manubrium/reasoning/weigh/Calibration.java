package org.manubrium.reasoning.weigh;

import java.util.List;

/**
 * A published share of people who show a sign, in the model's words: which state of the body they have, and which reading
 * counts as the sign.
 *
 * @param ratio the id of the published figure
 * @param sensitivity the share with the state who show the sign, 0..1
 * @param state what they have
 * @param reads what is read, as manoeuvres write it
 * @param shows the readings that count
 */
public record Calibration(String ratio, double sensitivity, State state, String reads, List<String> shows) {
    public Calibration {
        shows = List.copyOf(shows);
    }

    /**
     * A state of the body.
     *
     * @param structures one of which is hurt; empty if the state is a quantity
     * @param part the segment or level of the structure, or blank for any
     * @param both whether both sides must be hurt
     * @param quantity the family of a quantity that is moved; blank if the state is a lesion
     */
    public record State(List<String> structures, String part, boolean both, String quantity) {
        public State {
            structures = List.copyOf(structures);
        }
    }
}
