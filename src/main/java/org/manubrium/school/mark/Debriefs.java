package org.manubrium.school.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Position;
import org.manubrium.examination.Question;
import org.manubrium.exchange.EventJson;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.event.Event;
import org.manubrium.school.bedside.Patients;
import org.manubrium.store.Attempt;
import org.manubrium.store.Database;
import org.manubrium.store.StoredEvent;
import org.manubrium.store.StoredMark;
import org.manubrium.store.Stores;

/** Shows marked attempts: to their student, and to those who teach. */
public final class Debriefs {
    private final Database database;
    private final Patients patients;
    private final Examination examination;
    private final Conventions conventions;
    private final Teaching teaching;

    public Debriefs(
            Database database, Patients patients, Examination examination, Conventions conventions, Teaching teaching) {
        this.database = database;
        this.patients = patients;
        this.examination = examination;
        this.conventions = conventions;
        this.teaching = teaching;
    }

    /** The debrief of a student's own attempt; empty if there is none, or if it is not handed in. */
    public Optional<Debrief> own(long attempt, long account) {
        return database.inTransaction(stores -> stores.attempts()
                .find(attempt)
                .filter(a -> a.accountId() == account)
                .flatMap(a -> debrief(stores, a)));
    }

    /** The debrief of any student's attempt, for those who teach. */
    public Optional<Debrief> any(long attempt) {
        return database.inTransaction(stores -> stores.attempts().find(attempt).flatMap(a -> debrief(stores, a)));
    }

    private Optional<Debrief> debrief(Stores stores, Attempt attempt) {
        return stores.marks().current(attempt.id()).map(mark -> debrief(stores, attempt, mark));
    }

    private Debrief debrief(Stores stores, Attempt attempt, StoredMark mark) {
        List<Debrief.Step> timeline = new ArrayList<>();
        for (StoredEvent stored : stores.events().of(attempt.id())) {
            said(EventJson.read(stored.body()).event())
                    .ifPresent(text -> timeline.add(new Debrief.Step((int) stored.bedsideSeconds(), text)));
        }
        return new Debrief(
                attempt.id(),
                patients.known(stores, attempt),
                mark.sheet(),
                conventions.name(mark.convention()),
                timeline,
                stores.marks().changes(attempt.id()),
                teaching.of(stores, attempt, mark.convention()));
    }

    /** What was done, in words; readings and answers stand on the mark sheet. */
    private Optional<String> said(Event event) {
        if (event instanceof Event.Moved moved) {
            return examination.position(moved.position()).map(Position::name).map(name -> "patient " + name);
        }
        if (event instanceof Event.Asked asked) {
            return examination.question(asked.question()).map(Question::name);
        }
        if (event instanceof Event.Probed probed) {
            return Optional.of(said(probed.item()));
        }
        if (event instanceof Event.Deferred deferred) {
            String why = examination
                    .deferral(deferred.reason())
                    .map(reason -> reason.name())
                    .orElse(deferred.reason());
            return Optional.of("put off: " + said(deferred.item()) + ", because " + why);
        }
        return event instanceof Event.HandedIn ? Optional.of("handed in") : Optional.empty();
    }

    private String said(Item item) {
        Optional<Manoeuvre> manoeuvre = examination.manoeuvre(item.manoeuvre());
        String place = manoeuvre.stream()
                .flatMap(m -> m.places().stream())
                .filter(p -> p.id().equals(item.place()))
                .map(p -> ", " + p.name())
                .findFirst()
                .orElse("");
        return manoeuvre.map(Manoeuvre::name).orElse(item.manoeuvre())
                + (item.side() == Side.NONE ? "" : ", " + item.side().word())
                + place;
    }
}
