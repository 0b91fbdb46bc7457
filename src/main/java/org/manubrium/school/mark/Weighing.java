package org.manubrium.school.mark;

import java.util.Optional;
import org.manubrium.marking.Weights;
import org.manubrium.school.account.Refused;
import org.manubrium.store.Database;
import org.manubrium.store.SetCase;

/** How much each domain of the mark counts in one set case. */
public final class Weighing {
    private final Database database;
    private final Weights usual;
    private final Remarkings remarkings;
    private final RemarkWorker worker;

    /** @param usual the weights that hold unless others are set */
    public Weighing(Database database, Weights usual, Remarkings remarkings, RemarkWorker worker) {
        this.database = database;
        this.usual = usual;
        this.remarkings = remarkings;
        this.worker = worker;
    }

    public Weights usual() {
        return usual;
    }

    /** The weights in force. */
    public Weights of(SetCase set) {
        Optional<String> own = database.direct(stores -> stores.setCases().weights(set.id()));
        return own.flatMap(Weights::parse).orElse(usual);
    }

    /**
     * Weighs a set case otherwise and marks what was handed in again.
     *
     * @throws Refused for weights that are none, or the same
     */
    public void set(long educator, SetCase set, String text) {
        Weights wanted = Weights.parse(text)
                .orElseThrow(
                        () -> new Refused("Write numbers from 0 to 999; one of the first four must be more than 0."));
        Weights before = of(set);
        if (wanted.equals(before)) {
            throw new Refused("These are the weights in force already.");
        }
        String reason = "The domains are weighed " + wanted.text() + " now (essential, reading, interpretation,"
                + " conclusion; then, if they count, thoroughness, order and handling, information gained, confidence),"
                + " not " + before.text() + ".";
        database.inTransaction(stores -> {
            stores.setCases().setWeights(set.id(), wanted.text());
            return remarkings.ask(stores, set.caseVersionId(), Optional.of(set.id()), reason, educator);
        });
        worker.wake();
    }
}
