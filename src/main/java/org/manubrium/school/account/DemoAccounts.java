package org.manubrium.school.account;

import java.time.Clock;
import java.util.Set;
import org.manubrium.security.Account;
import org.manubrium.security.Role;
import org.manubrium.store.Database;
import org.manubrium.store.Stores;

/** The demo's own people, one a role, who come in by a click: they have no password, and none would let them in. */
public final class DemoAccounts {
    private static final String NO_PASSWORD = "";

    private final Database database;
    private final Sessions sessions;
    private final Clock clock;

    public DemoAccounts(Database database, Sessions sessions, Clock clock) {
        this.database = database;
        this.sessions = sessions;
        this.clock = clock;
    }

    /** Makes them in an empty database. */
    public void make() {
        database.inTransaction(stores -> {
            add(stores, Role.STUDENT, "Rowan Sedge");
            add(stores, Role.EDUCATOR, "Dr Linnet Harrow");
            return add(stores, Role.REVIEWER, "Professor Alder Quill");
        });
    }

    /** Opens a session as the demo's person of this role. */
    public SignedIn enter(Role role) {
        return database.inTransaction(stores ->
                sessions.open(stores, stores.accounts().named(loginName(role)).orElseThrow()));
    }

    /** The login name of the demo's person of this role. */
    public static String loginName(Role role) {
        return switch (role) {
            case STUDENT -> "demo-student";
            case EDUCATOR -> "demo-educator";
            case REVIEWER -> "demo-reviewer";
        };
    }

    private Account add(Stores stores, Role role, String name) {
        return stores.accounts().add(loginName(role), name, NO_PASSWORD, Set.of(role), clock.instant());
    }
}
