package org.manubrium.school.mark;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.manubrium.exchange.EventJson;
import org.manubrium.exchange.SheetJson;
import org.manubrium.marking.Checked;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.Marker;
import org.manubrium.marking.Measured;
import org.manubrium.marking.Weights;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.school.bedside.OnHandIn;
import org.manubrium.store.Attempt;
import org.manubrium.store.Cohort;
import org.manubrium.store.SetCase;
import org.manubrium.store.StoredEvent;
import org.manubrium.store.StoredMark;
import org.manubrium.store.Stores;

/** Marks what has been handed in. */
public final class Marks implements OnHandIn {
    private final KeysInForce keys;
    private final Weights weights;
    private final String usualConvention;
    private final Clock clock;
    private final Measuring measuring;

    /**
     * @param usualConvention the teaching convention for practice outside any cohort
     * @param measuring what the profile of an attempt measures; asked for only where it counts
     */
    public Marks(KeysInForce keys, Weights weights, String usualConvention, Clock clock, Measuring measuring) {
        this.keys = keys;
        this.weights = weights;
        this.usualConvention = usualConvention;
        this.clock = clock;
        this.measuring = measuring;
    }

    /** What the profile of an attempt at a version measures. */
    public interface Measuring {
        Measured of(long version, CompiledKey key, List<Logged> events);
    }

    /** By what an attempt is marked. */
    record Rules(Marker marker, String convention, Weights weights, Checked checked) {}

    @Override
    public void handedIn(Stores stores, Attempt attempt) {
        stores.marks().add(mark(rules(stores, attempt), attempt, stores.events().done(attempt.id()), Optional.empty()));
    }

    /** The rules in force for an attempt, and for every other at the same version in the same set case. */
    Rules rules(Stores stores, Attempt attempt) {
        return new Rules(
                new Marker(keys.of(stores, attempt.caseVersionId())),
                convention(stores, attempt),
                weights(stores, attempt),
                checked(stores, attempt));
    }

    /** The mark of an attempt by these rules, not stored. */
    StoredMark mark(Rules rules, Attempt attempt, List<StoredEvent> events, Optional<Long> round) {
        List<Logged> done = events.stream().map(Marks::logged).toList();
        boolean profiled = !rules.weights().besides().equals(Weights.Besides.NOTHING);
        MarkSheet sheet = rules.marker()
                .mark(
                        rules.convention(),
                        rules.weights(),
                        rules.checked(),
                        profiled
                                ? measuring.of(
                                        attempt.caseVersionId(), rules.marker().key(), done)
                                : Measured.NOTHING,
                        done);
        return new StoredMark(
                0,
                attempt.id(),
                rules.convention(),
                sheet.total(),
                SheetJson.write(sheet),
                clock.instant(),
                false,
                round);
    }

    /** In a station a fact that nobody here has checked scores only once an educator has confirmed it. */
    private static Checked checked(Stores stores, Attempt attempt) {
        return new Checked(isStation(stores, attempt), stores.confirmations().inForce());
    }

    static boolean isStation(Stores stores, Attempt attempt) {
        return attempt.setCaseId()
                .flatMap(set -> stores.setCases().find(set))
                .filter(set -> set.mode() == SetCase.Mode.STATION)
                .isPresent();
    }

    /** As the educator weighs the set case; as tabled where nobody does. */
    private Weights weights(Stores stores, Attempt attempt) {
        return attempt.setCaseId()
                .flatMap(set -> stores.setCases().weights(set))
                .flatMap(Weights::parse)
                .orElse(weights);
    }

    /** The teaching convention of the cohort to which the case was set. */
    public String convention(Stores stores, Attempt attempt) {
        return attempt.setCaseId()
                .flatMap(set -> stores.setCases().find(set))
                .flatMap(set -> stores.cohorts().find(set.cohortId()))
                .map(Cohort::convention)
                .orElse(usualConvention);
    }

    static List<Logged> logged(Stores stores, Attempt attempt) {
        return stores.events().done(attempt.id()).stream().map(Marks::logged).toList();
    }

    private static Logged logged(StoredEvent stored) {
        return new Logged(
                EventJson.read(stored.body()).event(), stored.clientKey(), stored.seq(), stored.position(), (int)
                        stored.bedsideSeconds());
    }
}
