package org.manubrium.school.bedside;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.manubrium.patient.Body;
import org.manubrium.store.Attempt;
import org.manubrium.store.CaseVersion;
import org.manubrium.store.Stores;
import org.manubrium.tables.Reference;

/** The patients of case versions. A version never changes, so each is made once and kept while there is room. */
public final class Patients {
    private static final int ROOM = 500;

    private final Function<CaseVersion, PatientCase> make;
    private final Map<Long, PatientCase> made = new ConcurrentHashMap<>();

    public Patients(Reference reference) {
        this.make = new CasePatients(reference)::of;
    }

    /** What is known beforehand of the patient of an attempt. */
    public Known known(Stores stores, Attempt attempt) {
        return of(
                        attempt.caseVersionId(),
                        version -> stores.cases().version(version).orElseThrow())
                .known();
    }

    /** The body of the patient of an attempt, for those who look back on it. */
    public Body body(Stores stores, Attempt attempt) {
        return of(
                        attempt.caseVersionId(),
                        version -> stores.cases().version(version).orElseThrow())
                .body();
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
