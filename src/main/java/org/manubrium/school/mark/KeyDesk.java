package org.manubrium.school.mark;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.manubrium.exchange.KeyJson;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.Marker;
import org.manubrium.marking.Weights;
import org.manubrium.marking.correction.BadCorrection;
import org.manubrium.marking.correction.CorrectedKey;
import org.manubrium.marking.correction.Correction;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.school.account.Refused;
import org.manubrium.store.CaseVersion;
import org.manubrium.store.Database;
import org.manubrium.store.KeyCorrection;
import org.manubrium.store.Stores;

/**
 * Corrects the key of a case version that is in use: by compiling its text anew from the tables as they are now, or one line
 * of the mark sheet at a time. Each correction is kept with who, when and why, and every attempt is marked again.
 */
public final class KeyDesk {
    private static final int LONGEST = 1000;

    private final Database database;
    private final KeysInForce keys;
    private final Function<CaseVersion, CompiledKey> compile;
    private final Weights weights;
    private final Remarkings remarkings;
    private final RemarkWorker worker;
    private final Clock clock;

    /** @param compile compiles a version's text from the tables as they are now; Refused if it can no longer be read */
    public KeyDesk(
            Database database,
            KeysInForce keys,
            Function<CaseVersion, CompiledKey> compile,
            Weights weights,
            Remarkings remarkings,
            RemarkWorker worker,
            Clock clock) {
        this.database = database;
        this.keys = keys;
        this.compile = compile;
        this.weights = weights;
        this.remarkings = remarkings;
        this.worker = worker;
        this.clock = clock;
    }

    /** The teaching conventions that a version's key holds. */
    public List<String> conventions(long version) {
        return database.direct(stores -> keys.of(stores, version)).conventions();
    }

    /** What is marked in a version, and what is right, under one convention. */
    public List<MarkSheet.Line> lines(long version, String convention) {
        CompiledKey key = database.direct(stores -> keys.of(stores, version));
        return Marker.mark(key, convention, weights, List.of()).lines();
    }

    /** The corrections of a version, the newest first. */
    public List<KeyCorrection> corrections(long version) {
        return database.direct(stores -> stores.keys().of(version));
    }

    /**
     * Corrects one line of the mark sheet.
     *
     * @throws Refused for a line or a text that will not do, no reason, or a correction that changes nothing
     */
    public void correct(long educator, CaseVersion version, Correction correction, String reason) {
        String what = correction.line() + " (" + String.join(", ", correction.conventions()) + "): "
                + correction.to().strip();
        CompiledKey before = database.direct(stores -> keys.of(stores, version.id()));
        try {
            put(educator, version, before, CorrectedKey.of(before, correction), what, reason);
        } catch (BadCorrection bad) {
            throw new Refused(bad.sentence(), bad);
        }
    }

    /**
     * Compiles the key anew from the tables as they are now. Corrections made by hand are gone from it.
     *
     * @throws Refused for no reason, or if the key would be the same
     */
    public void compileAnew(long educator, CaseVersion version, String reason) {
        CompiledKey before = database.direct(stores -> keys.of(stores, version.id()));
        CompiledKey after = compile.apply(version);
        put(educator, version, before, after, "compiled anew: " + differences(before, after), reason);
    }

    private void put(
            long educator, CaseVersion version, CompiledKey before, CompiledKey after, String what, String why) {
        String reason = why.strip();
        if (reason.isEmpty() || reason.length() > LONGEST) {
            throw new Refused(
                    "Say why, in at most " + LONGEST + " characters: the students whose mark changes read it.");
        }
        if (saysTheSame(before, after)) {
            throw new Refused("The key says that already; nothing would change.");
        }
        String text = KeyJson.write(after);
        database.inTransaction(stores -> {
            add(stores, educator, version, after.tablesHash(), text, what, reason);
            return remarkings.ask(stores, version.id(), Optional.empty(), reason, educator);
        });
        worker.wake();
    }

    private void add(Stores stores, long by, CaseVersion version, String hash, String key, String what, String reason) {
        stores.keys()
                .add(new KeyCorrection(
                        0, version.id(), key, hash, shortened(what), reason, Optional.of(by), clock.instant()));
    }

    private static String shortened(String what) {
        return what.length() <= LONGEST ? what : what.substring(0, LONGEST - 1) + "…";
    }

    /** Two keys that differ only in the state of the tables they name mark alike. */
    private static boolean saysTheSame(CompiledKey one, CompiledKey other) {
        return one.conventions().equals(other.conventions())
                && one.lines().equals(other.lines())
                && one.conclusion().equals(other.conclusion())
                && one.sore().equals(other.sore())
                && one.deferrals().equals(other.deferrals())
                && one.harms().equals(other.harms());
    }

    private static String differences(CompiledKey before, CompiledKey after) {
        List<String> labels = new ArrayList<>();
        after.lines().stream()
                .filter(line -> !before.line(line.item()).filter(line::equals).isPresent())
                .filter(line -> line.necessity().essential()
                        || before.line(line.item())
                                .filter(old -> old.necessity().essential())
                                .isPresent())
                .forEach(line -> labels.add(line.label()));
        if (!before.conclusion().equals(after.conclusion())) {
            labels.add("the conclusion");
        }
        return labels.isEmpty() ? "nothing on which the case turns" : String.join("; ", labels);
    }
}
