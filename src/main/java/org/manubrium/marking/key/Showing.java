package org.manubrium.marking.key;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * How an item must be examined for its sign to show.
 *
 * @param positions in which the sign shows
 * @param blind choices of technique, as "variant=choice", in which it does not show
 * @param lowestNeeds choices, as "variant=choice", one of which must have been tried before the lowest level of the scale
 *     may be recorded; empty if there is no such need
 */
public record Showing(List<String> positions, List<String> blind, List<String> lowestNeeds) {
    public Showing {
        positions = List.copyOf(positions);
        blind = List.copyOf(blind);
        lowestNeeds = List.copyOf(lowestNeeds);
    }

    /** Whether a probe in this position with this technique could show the sign. */
    public boolean couldShow(String position, Map<String, String> technique) {
        return positions.contains(position) && choices(technique).noneMatch(blind::contains);
    }

    /** Whether one of the techniques makes up for what the lowest level needs. */
    public boolean lowestMayBeRecorded(Collection<Map<String, String>> techniques) {
        return lowestNeeds.isEmpty()
                || techniques.stream().anyMatch(tried -> choices(tried).anyMatch(lowestNeeds::contains));
    }

    private static Stream<String> choices(Map<String, String> technique) {
        return technique.entrySet().stream().map(choice -> choice.getKey() + "=" + choice.getValue());
    }
}
