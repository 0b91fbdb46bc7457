package org.manubrium.marking.key;

import java.util.List;
import org.manubrium.examination.Item;

/**
 * What hurts among the items that are examined in one way.
 *
 * @param name what is done, in words
 * @param manoeuvres every manoeuvre done in that way
 * @param sore the items at which the patient says that it hurts, and would not in health
 */
public record Soreness(String name, List<String> manoeuvres, List<Item> sore) {
    public Soreness {
        manoeuvres = List.copyOf(manoeuvres);
        sore = List.copyOf(sore);
    }
}
