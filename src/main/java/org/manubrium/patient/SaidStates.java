package org.manubrium.patient;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.manubrium.anatomy.UnknownSite;

/** Reads a lesion that is no loss on a pathway but a state of a part: "left lower lobe consolidation". */
final class SaidStates {
    private static final Pattern SIDE = Pattern.compile("\\b(right|left)\\b");
    private static final String FILLING = "\\b(of|the|at|in|on|lung|a)\\b";

    private final Physiology physiology;
    private final List<StateName> names;

    SaidStates(Physiology physiology, List<StateName> names) {
        this.physiology = physiology;
        this.names = names.stream()
                .sorted(Comparator.comparingInt((StateName name) -> -name.said().length()))
                .toList();
    }

    /**
     * By how much a lesion moves each quantity; empty if the text names no state.
     *
     * @param loss 0..1
     * @throws UnknownSite when it names a state, and no side or no place where it can be
     */
    Optional<Map<String, Double>> shifts(String text, double loss) {
        String words = text.toLowerCase(Locale.ROOT).replace('-', ' ');
        return names.stream()
                .map(StateName::said)
                .filter(words::contains)
                .findFirst()
                .map(said -> shifts(said, words.replaceFirst(Pattern.quote(said), " "), loss, text));
    }

    private Map<String, Double> shifts(String said, String rest, double loss, String text) {
        Matcher side = SIDE.matcher(rest);
        if (!side.find()) {
            throw new UnknownSite("\"" + text + "\" names no side: expected right or left");
        }
        String place = side.replaceFirst("").replaceAll(FILLING, " ").trim().replaceAll("\\s+", "-");
        Map<String, Double> found = new HashMap<>();
        for (StateName name : names) {
            if (name.said().equals(said)) {
                parts(name, side.group(1), place, text)
                        .forEach((id, share) -> found.merge(id, share * name.amount() * loss, Double::sum));
            }
        }
        return Map.copyOf(found);
    }

    private Map<String, Double> parts(StateName name, String side, String place, String text) {
        String where = place.isEmpty() ? name.place().orElse("") : place;
        String id = name.quantity().replace("@side", side).replace("@place", where);
        if (physiology.stands(id)) {
            return physiology.parts(id);
        }
        String head = id.substring(0, id.indexOf(where + "."));
        throw new UnknownSite("there is no place \"" + where.replace('-', ' ') + "\" in \"" + text + "\": expected "
                + String.join(", ", physiology.wholes(head)));
    }
}
