package org.manubrium.marking.compile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;
import org.manubrium.patient.Variation;
import org.manubrium.patient.sign.Signs;

/** The healthy people looked at last: whoever works at a case compiles it again and again. Safe for several threads. */
final class KnownPeople {
    private static final int MOST = 8;

    private final Signs signs;
    private final Map<Person, HealthyPeople> known =
            Collections.synchronizedMap(new LinkedHashMap<>(MOST, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<Person, HealthyPeople> eldest) {
                    return size() > MOST;
                }
            });

    KnownPeople(Signs signs) {
        this.signs = signs;
    }

    /** Healthy people like this body. */
    HealthyPeople like(Body body) {
        Person average = body.person().varied(Variation.AVERAGE);
        HealthyPeople before = known.get(average);
        if (before == null) {
            HealthyPeople people = new HealthyPeople(signs, body);
            known.put(average, people);
            return people;
        }
        return before;
    }
}
