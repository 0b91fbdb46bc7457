package org.manubrium.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.manubrium.security.Account;
import org.manubrium.security.Role;

class AccountStoreTest {
    @EachDatabase
    void accountIsFoundByItsNameInAnyCaseWithAllItsRoles(Database database) {
        Account made = database.inTransaction(stores ->
                stores.accounts().add("Linnet", "Dr Linnet", "hash", Set.of(Role.EDUCATOR, Role.REVIEWER), Rows.NOON));

        assertThat(Rows.maybe(database, stores -> stores.accounts().named("lINNET")))
                .contains(made);
        assertThat(Rows.maybe(database, stores -> stores.accounts().find(made.id())))
                .contains(made);
        assertThat(Rows.maybe(database, stores -> stores.accounts().named("linne")))
                .isEmpty();
    }

    @EachDatabase
    void accountWithoutRolesIsReadAsOne(Database database) {
        database.inTransaction(stores -> stores.accounts().add("nobody", "Nobody", "", Set.of(), Rows.NOON));

        assertThat(Rows.maybe(database, stores -> stores.accounts().named("nobody")))
                .hasValueSatisfying(nobody -> assertThat(nobody.roles()).isEmpty());
    }

    @EachDatabase
    void thoseWithARoleAreListedByName(Database database) {
        Account yarrow = Rows.student(database, "yarrow");
        Account bryony = Rows.student(database, "bryony");
        database.inTransaction(
                stores -> stores.accounts().add("linnet", "A. Linnet", "hash", Set.of(Role.EDUCATOR), Rows.NOON));

        List<Account> students = database.direct(stores -> stores.accounts().withRole(Role.STUDENT));
        assertThat(students).containsExactly(bryony, yarrow);
    }

    @EachDatabase
    void passwordHashIsReplaced(Database database) {
        Account rowan = Rows.student(database, "rowan");
        database.inTransaction(stores -> {
            stores.accounts().setPasswordHash(rowan.id(), "other");
            return rowan;
        });

        String hash = database.direct(stores -> stores.accounts().passwordHash(rowan.id()));
        assertThat(hash).isEqualTo("other");
    }
}
