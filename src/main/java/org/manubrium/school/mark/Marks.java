package org.manubrium.school.mark;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.manubrium.exchange.EventJson;
import org.manubrium.exchange.KeyJson;
import org.manubrium.exchange.SheetJson;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.Marker;
import org.manubrium.marking.Weights;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.school.bedside.OnHandIn;
import org.manubrium.store.Attempt;
import org.manubrium.store.CaseVersion;
import org.manubrium.store.Cohort;
import org.manubrium.store.StoredEvent;
import org.manubrium.store.StoredMark;
import org.manubrium.store.Stores;

/** Marks what has been handed in. */
public final class Marks implements OnHandIn {
    private static final int ROOM = 500;

    private final Weights weights;
    private final String usualConvention;
    private final Clock clock;
    private final Map<Long, CompiledKey> keys = new ConcurrentHashMap<>();

    /** @param usualConvention the teaching convention for practice outside any cohort */
    public Marks(Weights weights, String usualConvention, Clock clock) {
        this.weights = weights;
        this.usualConvention = usualConvention;
        this.clock = clock;
    }

    @Override
    public void handedIn(Stores stores, Attempt attempt) {
        mark(stores, attempt);
    }

    /** Marks an attempt and keeps the mark; one it had before is superseded. */
    public StoredMark mark(Stores stores, Attempt attempt) {
        String convention = convention(stores, attempt);
        MarkSheet sheet = Marker.mark(key(stores, attempt), convention, weights, logged(stores, attempt));
        return stores.marks().add(attempt.id(), convention, sheet.total(), SheetJson.write(sheet), clock.instant());
    }

    /** The teaching convention of the cohort to which the case was set. */
    public String convention(Stores stores, Attempt attempt) {
        return attempt.setCaseId()
                .flatMap(set -> stores.setCases().find(set))
                .flatMap(set -> stores.cohorts().find(set.cohortId()))
                .map(Cohort::convention)
                .orElse(usualConvention);
    }

    private static List<Logged> logged(Stores stores, Attempt attempt) {
        return stores.events().of(attempt.id()).stream().map(Marks::logged).toList();
    }

    private static Logged logged(StoredEvent stored) {
        return new Logged(
                EventJson.read(stored.body()).event(), stored.clientKey(), stored.seq(), stored.position(), (int)
                        stored.bedsideSeconds());
    }

    /** A version's key never changes, so it is read once and kept while there is room. */
    private CompiledKey key(Stores stores, Attempt attempt) {
        long version = attempt.caseVersionId();
        return Optional.ofNullable(keys.get(version)).orElseGet(() -> {
            CaseVersion found = stores.cases().version(version).orElseThrow();
            CompiledKey key = KeyJson.read(found.compiledKey());
            if (keys.size() < ROOM) {
                keys.put(version, key);
            }
            return key;
        });
    }
}
