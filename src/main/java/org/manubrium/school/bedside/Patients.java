package org.manubrium.school.bedside;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.manubrium.store.CaseVersion;
import org.manubrium.tables.Reference;

/** The patients of case versions. A version never changes, so each is made once and kept while there is room. */
public final class Patients {
    private static final int ROOM = 500;

    private final Function<CaseVersion, PatientCase> make;
    private final Map<Long, PatientCase> made = new ConcurrentHashMap<>();

    public Patients(Reference reference) {
        this.make = new CasePatients(reference)::of;
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
