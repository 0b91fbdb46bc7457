package org.manubrium.school.mark;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.manubrium.marking.Checked;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.Marker;
import org.manubrium.marking.Measured;
import org.manubrium.marking.Weights;
import org.manubrium.marking.compile.Unopened;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Origin;
import org.manubrium.school.account.Refused;
import org.manubrium.security.Account;
import org.manubrium.store.Attempt;
import org.manubrium.store.AuditEntry;
import org.manubrium.store.Cohort;
import org.manubrium.store.Confirmation;
import org.manubrium.store.Database;
import org.manubrium.store.SetCase;
import org.manubrium.store.Stores;

/**
 * Where an educator confirms facts that nobody here has checked, so that they score in stations. A confirmation is of a row
 * of the tables, wherever it is used: every station it touches is marked again.
 */
public final class FactDesk {
    private static final int LONGEST = 1000;
    private static final int LONGEST_FACT = 2000;
    private static final int NAMES_SAID = 5;

    private final Database database;
    private final KeysInForce keys;
    private final Map<String, Unopened.Fact> facts;
    private final Weights weights;
    private final Remarkings remarkings;
    private final RemarkWorker worker;
    private final Clock clock;

    public FactDesk(
            Database database,
            KeysInForce keys,
            Unopened unopened,
            Weights weights,
            Remarkings remarkings,
            RemarkWorker worker,
            Clock clock) {
        this.database = database;
        this.keys = keys;
        this.facts = unopened.facts().stream()
                .collect(Collectors.toMap(fact -> fact.origin().row(), fact -> fact, (one, same) -> one));
        this.weights = weights;
        this.remarkings = remarkings;
        this.worker = worker;
        this.clock = clock;
    }

    /** The facts behind what is asked in a set case that nobody here has checked, confirmed or not. */
    public List<UncheckedFact> of(SetCase set) {
        return database.inTransaction(stores -> of(stores, set));
    }

    private List<UncheckedFact> of(Stores stores, SetCase set) {
        Map<Origin, List<String>> marks = new LinkedHashMap<>();
        for (Line line : asked(stores, set)) {
            line.standing()
                    .unchecked()
                    .forEach(origin -> marks.computeIfAbsent(origin, o -> new ArrayList<>())
                            .add(line.asked()));
        }
        Map<String, FactConfirmed> confirmed = confirmed(stores);
        return marks.entrySet().stream()
                .map(entry -> fact(entry.getKey(), entry.getValue(), confirmed))
                .toList();
    }

    /** The sheet of someone who does nothing asks everything on which the case turns. */
    private List<Line> asked(Stores stores, SetCase set) {
        String convention = stores.cohorts()
                .find(set.cohortId())
                .map(Cohort::convention)
                .orElseThrow(() -> new IllegalStateException("set case " + set.id() + " has no cohort"));
        CompiledKey key = keys.of(stores, set.caseVersionId());
        return new Marker(key)
                .mark(convention, weights, new Checked(true, Set.of()), Measured.NOTHING, List.of())
                .lines();
    }

    private UncheckedFact fact(Origin origin, List<String> marks, Map<String, FactConfirmed> confirmed) {
        Optional<Unopened.Fact> now = Optional.ofNullable(facts.get(origin.row()));
        return new UncheckedFact(
                origin.row(),
                now.map(Unopened.Fact::kind).orElse("fact"),
                now.map(Unopened.Fact::name).orElseGet(() -> named(origin.row())),
                now.map(Unopened.Fact::says).orElse(""),
                origin.source(),
                marks,
                Optional.ofNullable(confirmed.get(origin.row())));
    }

    /** A row by its table's own words, without its print. */
    private static String named(String row) {
        return row.isEmpty() ? "a fact that the key does not name" : row.replaceAll("^[a-z_]+/|#[0-9a-f]+$", "");
    }

    private static Map<String, FactConfirmed> confirmed(Stores stores) {
        Map<String, FactConfirmed> found = new HashMap<>();
        for (Confirmation made : stores.confirmations().all()) {
            if (made.isInForce()) {
                String who = made.madeBy()
                        .flatMap(id -> stores.accounts().find(id))
                        .map(Account::displayName)
                        .orElse("someone who has left");
                found.putIfAbsent(made.rowName(), new FactConfirmed(made.id(), who, made.madeAt(), made.reason()));
            }
        }
        return found;
    }

    /**
     * Confirms facts of a set case and marks every station again that stands on them.
     *
     * @param rows their names; those that are confirmed already are left as they are
     * @throws Refused for no fact, or no reason
     */
    public void confirm(long educator, SetCase set, Collection<String> rows, String why) {
        String reason = reason(why);
        database.inTransaction(stores -> {
            List<UncheckedFact> wanted = of(stores, set).stream()
                    .filter(fact -> fact.open() && rows.contains(fact.row()))
                    .toList();
            if (wanted.isEmpty()) {
                throw new Refused("Tick at least one fact that nobody has confirmed yet.");
            }
            wanted.forEach(fact -> add(stores, educator, fact, reason));
            audit(stores, educator, "facts-confirmed", wanted.size() + " facts");
            List<String> named = wanted.stream().map(UncheckedFact::row).toList();
            return markAgain(stores, educator, named, "Confirmed by a teacher: " + said(wanted) + ". " + reason);
        });
        worker.wake();
    }

    private void add(Stores stores, long educator, UncheckedFact fact, String reason) {
        String said = shortened(fact.kind() + ": " + fact.name() + ". " + fact.says(), LONGEST_FACT);
        stores.confirmations().add(Confirmation.made(fact.row(), said, reason, educator, clock.instant()));
    }

    /**
     * Takes a confirmation back and marks every station again that stands on it.
     *
     * @throws Refused for one that is not in force, or no reason
     */
    public void takeBack(long educator, long confirmation, String why) {
        String reason = reason(why);
        database.inTransaction(stores -> {
            Confirmation made = stores.confirmations()
                    .find(confirmation)
                    .filter(one -> stores.confirmations().takeBack(one.id(), educator, clock.instant(), reason))
                    .orElseThrow(() -> new Refused("This is not confirmed any more."));
            audit(stores, educator, "fact-taken-back", made.rowName());
            String text = "No longer confirmed: " + named(made.rowName()) + ". " + reason;
            return markAgain(stores, educator, List.of(made.rowName()), text);
        });
        worker.wake();
    }

    /** Only where somebody has handed in: what is handed in later is marked by what is confirmed then. */
    private int markAgain(Stores stores, long educator, Collection<String> rows, String reason) {
        List<SetCase> touched = stores.setCases().stations().stream()
                .filter(set -> stores.attempts().ofSetCase(set.id()).stream().anyMatch(Attempt::isHandedIn))
                .filter(set -> keys.of(stores, set.caseVersionId()).standsOn(rows))
                .toList();
        touched.forEach(set -> remarkings.ask(
                stores, set.caseVersionId(), Optional.of(set.id()), shortened(reason, LONGEST), educator));
        return touched.size();
    }

    private void audit(Stores stores, long educator, String action, String detail) {
        stores.audit().add(new AuditEntry(clock.instant(), Optional.of(educator), action, detail));
    }

    private static String reason(String why) {
        String reason = why.strip();
        if (reason.isEmpty() || reason.length() > LONGEST) {
            throw new Refused("Say in a sentence how you know, in at most " + LONGEST
                    + " characters: the students whose mark changes read it.");
        }
        return reason;
    }

    private static String said(List<UncheckedFact> facts) {
        String names = facts.stream().limit(NAMES_SAID).map(UncheckedFact::name).collect(Collectors.joining("; "));
        return facts.size() <= NAMES_SAID ? names : names + " and " + (facts.size() - NAMES_SAID) + " more";
    }

    private static String shortened(String text, int longest) {
        return text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
    }
}
