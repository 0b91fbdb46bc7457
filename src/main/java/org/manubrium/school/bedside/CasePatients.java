package org.manubrium.school.bedside;

import java.util.List;
import org.manubrium.casefile.CaseFile;
import org.manubrium.casefile.CaseReading;
import org.manubrium.casefile.Profile;
import org.manubrium.store.CaseVersion;
import org.manubrium.tables.Reference;

/** Makes the patient of a case version from its text. */
final class CasePatients {
    private final Reference reference;

    CasePatients(Reference reference) {
        this.reference = reference;
    }

    PatientCase of(CaseVersion version) {
        CaseReading reading = CaseFile.reread(version.yaml(), "case version " + version.id(), reference);
        CaseFile read = reading.caseFile()
                .orElseThrow(() -> new IllegalStateException("case version " + version.id()
                        + " was put in use but can no longer be read: " + reading.problems()));
        return new PatientCase(known(read), read.history(), read.body(reference));
    }

    private static Known known(CaseFile read) {
        Profile patient = read.patient();
        List<Known.Noted> observations = read.observations().stream()
                .map(o -> new Known.Noted(o.label(), o.text()))
                .toList();
        return new Known(
                read.title(),
                patient.name(),
                patient.age(),
                patient.sex().word(),
                read.vignette(),
                observations,
                read.expect());
    }
}
