package org.manubrium.school.mark;

import java.util.List;
import org.manubrium.learning.Calibration.Judgement;
import org.manubrium.marking.Sureness;
import org.manubrium.store.Attempt;
import org.manubrium.store.Database;
import org.manubrium.store.Stores;

/** How sure a student was, over all first attempts that are handed in. */
public final class HowSure {
    private final Database database;
    private final KeysInForce keys;

    public HowSure(Database database, KeysInForce keys) {
        this.database = database;
        this.keys = keys;
    }

    /** Later attempts at a case are left out: there the truth was known. */
    public List<Judgement> of(long account) {
        return database.inTransaction(stores -> stores.attempts().ofStudent(account).stream()
                .filter(attempt -> attempt.isHandedIn() && attempt.isFirst() && !attempt.trial())
                .flatMap(attempt -> judged(stores, attempt).stream())
                .toList());
    }

    private List<Judgement> judged(Stores stores, Attempt attempt) {
        return Sureness.of(keys.of(stores, attempt.caseVersionId()), Marks.logged(stores, attempt)).stream()
                .map(judged -> new Judgement(judged.percent() / 100.0, judged.right()))
                .toList();
    }
}
