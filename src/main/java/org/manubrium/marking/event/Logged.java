package org.manubrium.marking.event;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * An event as it was taken.
 *
 * @param clientKey the sender's own key, unique in its attempt
 * @param seq 1, 2, 3 … in the order in which events were taken
 * @param position the patient's position when it began
 * @param bedsideSeconds simulated time spent before it began
 */
public record Logged(Event event, String clientKey, int seq, String position, int bedsideSeconds) {

    /** An event with the sender's key, before it is taken. */
    public record Keyed(String clientKey, Event event) {}

    /**
     * Takes events in order, as a server would: a key that was taken before adds nothing, and nothing is taken after the
     * hand-in. Counts no bedside time.
     */
    public static List<Logged> inOrder(List<Keyed> events, String startPosition) {
        List<Logged> taken = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        String position = startPosition;
        for (Keyed keyed : events) {
            if (!keys.add(keyed.clientKey())) {
                continue;
            }
            taken.add(new Logged(keyed.event(), keyed.clientKey(), taken.size() + 1, position, 0));
            if (keyed.event() instanceof Event.HandedIn) {
                break;
            }
            if (keyed.event() instanceof Event.Moved moved) {
                position = moved.position();
            }
        }
        return List.copyOf(taken);
    }
}
