package org.manubrium;

import java.time.Clock;
import java.util.function.Function;
import org.manubrium.casefile.CaseFile;
import org.manubrium.casefile.CaseKeys;
import org.manubrium.marking.Weights;
import org.manubrium.marking.compile.Unopened;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.patient.sign.Signs;
import org.manubrium.school.account.Refused;
import org.manubrium.school.bedside.Patients;
import org.manubrium.school.mark.FactDesk;
import org.manubrium.school.mark.HowSure;
import org.manubrium.school.mark.KeyDesk;
import org.manubrium.school.mark.KeysInForce;
import org.manubrium.school.mark.Marks;
import org.manubrium.school.mark.Profiles;
import org.manubrium.school.mark.RemarkWorker;
import org.manubrium.school.mark.Remarkings;
import org.manubrium.school.mark.Teaching;
import org.manubrium.school.mark.ToDrill;
import org.manubrium.school.mark.Weighing;
import org.manubrium.store.CaseVersion;
import org.manubrium.store.Database;
import org.manubrium.tables.Reference;

/** Puts marking and marking again together. */
record MarkingWing(
        Marks marks,
        Remarkings remarkings,
        RemarkWorker worker,
        KeyDesk keys,
        ToDrill toDrill,
        Profiles profiles,
        Weighing weighing,
        HowSure howSure,
        FactDesk facts,
        KeysInForce inForce) {

    static MarkingWing of(Database database, Reference reference, Clock clock) {
        Weights weights = reference.marking().weights();
        String usual = reference.marking().conventions().ids().get(0);
        KeysInForce keys = new KeysInForce();
        Profiles profiles = new Profiles(
                database,
                keys,
                reference.examination(),
                reference.reasoning().grounds().threshold());
        Marks marks = new Marks(keys, weights, usual, clock, profiles::measured);
        Remarkings remarkings = new Remarkings(database, marks, clock);
        RemarkWorker worker = new RemarkWorker(remarkings);
        return new MarkingWing(
                marks,
                remarkings,
                worker,
                new KeyDesk(database, keys, compiler(reference), weights, remarkings, worker, clock),
                new ToDrill(keys),
                profiles,
                new Weighing(database, weights, remarkings, worker),
                new HowSure(database, keys),
                new FactDesk(database, keys, unopened(reference), weights, remarkings, worker, clock),
                keys);
    }

    private static Unopened unopened(Reference reference) {
        return new Unopened(
                reference.examination(),
                reference.conditions(),
                reference.signs().meanings().terms(),
                reference.marking().conventions());
    }

    Teaching teaching(Patients patients, Conventions conventions, Signs signs) {
        return new Teaching(inForce, patients, toDrill, conventions, signs);
    }

    private static Function<CaseVersion, CompiledKey> compiler(Reference reference) {
        CaseKeys keys = new CaseKeys(reference);
        return version -> keys.of(CaseFile.reread(version.yaml(), "case version " + version.id(), reference)
                .caseFile()
                .orElseThrow(
                        () -> new Refused("The text of this version can no longer be read. Revise it in a draft.")));
    }
}
