package org.manubrium.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.manubrium.security.Account;

class ConfirmationStoreTest {
    private static final String ROW = "manoeuvres/flesh#1f";

    private static Confirmation add(Database database, String row, Account by) {
        return database.inTransaction(stores -> stores.confirmations()
                .add(Confirmation.made(row, "manoeuvre: flesh", "Page 4 of the book.", by.id(), Rows.NOON)));
    }

    private static Set<String> inForce(Database database) {
        return database.direct(stores -> stores.confirmations().inForce());
    }

    @EachDatabase
    void confirmationIsKeptWithWhoWhenAndWhy(Database database) {
        Account teacher = Rows.student(database, "teasel");
        Confirmation made = add(database, ROW, teacher);

        assertThat(Rows.maybe(database, stores -> stores.confirmations().find(made.id())))
                .contains(made);
        assertThat(made.madeBy()).contains(teacher.id());
        assertThat(made.madeAt()).isEqualTo(Rows.NOON);
        assertThat(made.isInForce()).isTrue();
        assertThat(inForce(database)).containsExactly(ROW);
    }

    @EachDatabase
    void whatIsTakenBackStaysWithWhoWhenAndWhyAndCanBeConfirmedAgain(Database database) {
        Account teacher = Rows.student(database, "teasel");
        Confirmation made = add(database, ROW, teacher);
        boolean done = takeBack(database, made, teacher);

        assertThat(done).isTrue();
        assertThat(takeBack(database, made, teacher)).isFalse();
        assertThat(inForce(database)).isEmpty();
        Confirmation again = add(database, ROW, teacher);
        List<Confirmation> all =
                Rows.list(database, stores -> stores.confirmations().all());
        assertThat(all).extracting(Confirmation::id).containsExactly(again.id(), made.id());
        assertThat(all.get(1).takenBackReason()).isEqualTo(Optional.of("The page says otherwise."));
        assertThat(all.get(1).takenBackAt()).contains(Rows.NOON.plusSeconds(60));
        assertThat(inForce(database)).containsExactly(ROW);
    }

    private static boolean takeBack(Database database, Confirmation made, Account by) {
        return database.inTransaction(stores -> stores.confirmations()
                .takeBack(made.id(), by.id(), Rows.NOON.plusSeconds(60), "The page says otherwise."));
    }
}
