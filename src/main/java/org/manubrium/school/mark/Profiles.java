package org.manubrium.school.mark;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.manubrium.examination.Examination;
import org.manubrium.exchange.EventJson;
import org.manubrium.marking.Measured;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.profile.Profile;
import org.manubrium.marking.profile.ProfileMaker;
import org.manubrium.school.bedside.Bedside;
import org.manubrium.store.Attempt;
import org.manubrium.store.Database;
import org.manubrium.store.StoredEvent;
import org.manubrium.store.Stores;

/** The profiles of marked attempts. What a case version's key tells is worked out once and kept while there is room. */
public final class Profiles {
    private static final int ROOM = 200;

    private final Database database;
    private final KeysInForce keys;
    private final Examination examination;
    private final double threshold;
    private final Map<Long, Made> makers = new ConcurrentHashMap<>();

    /** @param threshold how likely a diagnosis must be to be likely enough, 0..1 */
    public Profiles(Database database, KeysInForce keys, Examination examination, double threshold) {
        this.database = database;
        this.keys = keys;
        this.examination = examination;
        this.threshold = threshold;
    }

    private record Made(CompiledKey key, ProfileMaker maker) {}

    /** The profile of an attempt that is marked; empty if it is not, or if its case has nothing to be weighed. */
    public Optional<Profile> of(long attempt) {
        return database.inTransaction(stores -> stores.attempts()
                .find(attempt)
                .filter(Attempt::isHandedIn)
                .flatMap(found -> maker(stores, found).of(events(stores, found))));
    }

    /** What the profile of an attempt measures, for a mark in which it counts. */
    public Measured measured(long version, CompiledKey key, List<Logged> events) {
        return maker(version, key).measured(events);
    }

    /** Whether this student may ask, in this attempt, what would help most next: in practice only, until it is handed in. */
    public boolean advises(long attempt, long account) {
        return database.inTransaction(stores -> stores.attempts()
                .find(attempt)
                .filter(found -> found.accountId() == account && advises(stores, found))
                .isPresent());
    }

    private static boolean advises(Stores stores, Attempt attempt) {
        return !Marks.isStation(stores, attempt) && !attempt.isHandedIn();
    }

    /** The step that would help most next, in words; empty if none may be asked for, or if none tells much. */
    public Optional<String> next(long attempt, long account) {
        return database.inTransaction(stores -> stores.attempts()
                .find(attempt)
                .filter(found -> found.accountId() == account && advises(stores, found))
                .flatMap(found -> next(stores, found)));
    }

    private Optional<String> next(Stores stores, Attempt attempt) {
        List<Logged> events = events(stores, attempt);
        String position = Bedside.START;
        for (Logged logged : events) {
            position = logged.event() instanceof Event.Moved moved ? moved.position() : logged.position();
        }
        return maker(stores, attempt).next(events, position);
    }

    private ProfileMaker maker(Stores stores, Attempt attempt) {
        return maker(attempt.caseVersionId(), keys.of(stores, attempt.caseVersionId()));
    }

    @SuppressWarnings("ReferenceEquality") // the key is kept by its holder: another object is a corrected key
    private ProfileMaker maker(long version, CompiledKey key) {
        Made kept = makers.get(version);
        if (kept != null && kept.key() == key) {
            return kept.maker();
        }
        ProfileMaker made = new ProfileMaker(key, examination, threshold);
        if (makers.size() < ROOM) {
            makers.put(version, new Made(key, made));
        }
        return made;
    }

    private static List<Logged> events(Stores stores, Attempt attempt) {
        return stores.events().of(attempt.id()).stream()
                .map(stored -> logged(stored))
                .toList();
    }

    private static Logged logged(StoredEvent stored) {
        return new Logged(
                EventJson.read(stored.body()).event(), stored.clientKey(), stored.seq(), stored.position(), (int)
                        stored.bedsideSeconds());
    }
}
