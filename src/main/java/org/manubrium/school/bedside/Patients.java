package org.manubrium.school.bedside;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.manubrium.store.CaseVersion;

/** The patients of case versions. A version never changes, so each is made once and kept while there is room. */
public final class Patients {
    private static final int ROOM = 500;

    private final Function<CaseVersion, PatientCase> make;
    private final Map<Long, PatientCase> made = new ConcurrentHashMap<>();

    public Patients(Function<CaseVersion, PatientCase> make) {
        this.make = make;
    }

    PatientCase of(long version, Function<Long, CaseVersion> find) {
        PatientCase known = made.get(version);
        if (known != null) {
            return known;
        }
        PatientCase fresh = make.apply(find.apply(version));
        if (made.size() < ROOM) {
            made.put(version, fresh);
        }
        return fresh;
    }
}
