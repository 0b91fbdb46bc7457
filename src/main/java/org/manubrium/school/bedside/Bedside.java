package org.manubrium.school.bedside;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Probe;
import org.manubrium.exchange.AppearanceJson;
import org.manubrium.exchange.EventJson;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.patient.sign.Signs;
import org.manubrium.store.Attempt;
import org.manubrium.store.Database;
import org.manubrium.store.NewEvent;
import org.manubrium.store.StoredEvent;
import org.manubrium.store.Stores;

/** Takes the events of an encounter one at a time and answers each with what it shows. */
public final class Bedside {
    /** How the patient lies when the student comes in. */
    public static final String START = "lying-45";

    private final Database database;
    private final Signs signs;
    private final Patients patients;
    private final ChoicesInForce choices;
    private final OnHandIn onHandIn;
    private final Clock clock;
    private final Seconds seconds;
    private final Fitness fitness;

    public Bedside(
            Database database, Signs signs, Patients patients, ChoicesInForce choices, OnHandIn onHandIn, Clock clock) {
        this.database = database;
        this.signs = signs;
        this.patients = patients;
        this.choices = choices;
        this.onHandIn = onHandIn;
        this.clock = clock;
        this.seconds = new Seconds(signs.examination());
        this.fitness = new Fitness(signs.examination());
    }

    public Examination examination() {
        return signs.examination();
    }

    /** The attempt with all that has happened in it; empty if this student has no such attempt. */
    public Optional<Encounter> open(long attemptId, long account) {
        return database.inTransaction(stores -> stores.attempts()
                .find(attemptId)
                .filter(attempt -> attempt.accountId() == account)
                .map(attempt -> encounter(stores, attempt)));
    }

    private Encounter encounter(Stores stores, Attempt attempt) {
        List<Shown> events =
                stores.events().of(attempt.id()).stream().map(this::shown).toList();
        BedsideTime now =
                events.isEmpty() ? atStart() : events.get(events.size() - 1).clock();
        return new Encounter(
                attempt.id(),
                attempt.isHandedIn(),
                patient(stores, attempt).known(),
                now,
                choices.of(stores, attempt),
                events);
    }

    /**
     * Takes an event. The same key again is answered as the first time and adds nothing, even after the hand-in.
     *
     * @param attemptId the attempt it belongs to
     * @param account whose attempt it must be
     */
    public Taken take(long attemptId, long account, Logged.Keyed sent) {
        return database.inTransaction(stores -> stores.attempts()
                .lock(attemptId)
                .filter(attempt -> attempt.accountId() == account)
                .map(attempt -> take(stores, attempt, sent))
                .orElseGet(Taken.NotYours::new));
    }

    private Taken take(Stores stores, Attempt attempt, Logged.Keyed sent) {
        Optional<StoredEvent> before = stores.events().find(attempt.id(), sent.clientKey());
        if (before.isPresent()) {
            return new Taken.Stored(shown(before.get()));
        }
        if (attempt.isHandedIn()) {
            return new Taken.Closed();
        }
        Optional<StoredEvent> last = stores.events().last(attempt.id());
        BedsideTime now = last.map(this::clockAfter).orElse(atStart());
        Optional<String> fault = fitness.fault(sent.event(), now.position());
        return fault.isPresent() ? new Taken.Unfit(fault.get()) : append(stores, attempt, sent, last, now);
    }

    private Taken append(
            Stores stores, Attempt attempt, Logged.Keyed sent, Optional<StoredEvent> last, BedsideTime now) {
        Event event = sent.event();
        StoredEvent added = stores.events()
                .addAfter(
                        last,
                        new NewEvent(
                                attempt.id(),
                                sent.clientKey(),
                                event.type(),
                                clock.instant(),
                                now.bedside(),
                                now.position(),
                                EventJson.write(sent),
                                show(stores, attempt, event, now.position())));
        if (event instanceof Event.HandedIn) {
            stores.attempts().handIn(attempt.id(), clock.instant());
            onHandIn.handedIn(stores, attempt);
        }
        return new Taken.Stored(
                new Shown(sent.clientKey(), added.seq(), event, seconds.after(now, event), added.shown()));
    }

    /** What the event shows, as JSON; "" if nothing. */
    private String show(Stores stores, Attempt attempt, Event event, String position) {
        if (event instanceof Event.Probed probed) {
            Probe probe = new Probe(probed.item(), position, probed.technique());
            return AppearanceJson.write(signs.show(patient(stores, attempt).body(), probe));
        }
        if (event instanceof Event.Asked asked) {
            PatientCase patient = patient(stores, attempt);
            String usual = patient.body().physiology().saying("asked-" + asked.question(), 1);
            String answer = patient.answers().getOrDefault(asked.question(), usual);
            return AppearanceJson.write(new Appearance("said", List.of(), List.of(), answer));
        }
        return "";
    }

    private PatientCase patient(Stores stores, Attempt attempt) {
        return patients.of(
                attempt.caseVersionId(),
                version -> stores.cases().version(version).orElseThrow());
    }

    private Shown shown(StoredEvent stored) {
        Event event = EventJson.read(stored.body()).event();
        return new Shown(stored.clientKey(), stored.seq(), event, seconds.after(began(stored), event), stored.shown());
    }

    private BedsideTime clockAfter(StoredEvent stored) {
        return seconds.after(began(stored), EventJson.read(stored.body()).event());
    }

    private static BedsideTime began(StoredEvent stored) {
        return new BedsideTime((int) stored.bedsideSeconds(), stored.position());
    }

    private static BedsideTime atStart() {
        return new BedsideTime(0, START);
    }
}
