package org.manubrium.school.drill;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.exchange.EventJson;
import org.manubrium.marking.event.Event;
import org.manubrium.store.Stores;

/** What fellow students take something for: their wrong answers here, and their answers about roots at the bedside. */
final class Confusions {
    private static final int READ = 200;

    private Confusions() {}

    static List<String> of(Stores stores, long account, String fact) {
        return Stream.concat(
                        stores.drill().confusions(account, fact).stream(), atTheBedside(stores, account, fact).stream())
                .distinct()
                .toList();
    }

    /** The commonest first; right ones are among them and left out by whoever asks. */
    private static List<String> atTheBedside(Stores stores, long account, String fact) {
        int colon = fact.indexOf(':');
        if (!fact.substring(0, colon).equals("roots")) {
            return List.of();
        }
        Map<String, Long> counted = stores.drill().answers(account, fact.substring(colon + 1), "roots", READ).stream()
                .map(body -> EventJson.read(body).event())
                .filter(Event.Answered.class::isInstance)
                .map(event -> String.join(" ", ((Event.Answered) event).answer()))
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return counted.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .toList();
    }
}
