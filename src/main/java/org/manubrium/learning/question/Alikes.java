package org.manubrium.learning.question;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Condition;

/** Conditions that are easily taken for one another: they change the same manoeuvres. */
final class Alikes {
    private static final int NEAREST = 4;

    /** By so many manoeuvres of different readers are others tried: trying all would take seconds. */
    private static final int TRIED = 6;

    private final Affecting affecting;

    Alikes(Affecting affecting) {
        this.affecting = affecting;
    }

    /** The conditions that share most of what it changes, in an order drawn by chance. */
    List<Condition> of(Condition condition, Random random) {
        List<Manoeuvre> tried = tried(condition);
        Map<Condition, Long> shared = new LinkedHashMap<>();
        affecting.illnesses().stream()
                .filter(other -> !other.id().equals(condition.id()))
                .forEach(other -> shared.put(other, affecting.changed(other, tried)));
        List<Condition> nearest = new ArrayList<>(shared.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .limit(NEAREST)
                .map(Map.Entry::getKey)
                .toList());
        Collections.shuffle(nearest, random);
        return List.copyOf(nearest);
    }

    private List<Manoeuvre> tried(Condition condition) {
        Map<String, Manoeuvre> byReader = new LinkedHashMap<>();
        affecting.by(condition).forEach(manoeuvre -> byReader.putIfAbsent(manoeuvre.reader(), manoeuvre));
        return byReader.values().stream().limit(TRIED).toList();
    }
}
