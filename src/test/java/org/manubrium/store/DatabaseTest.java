package org.manubrium.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.manubrium.security.Role;

class DatabaseTest {
    @EachDatabase
    void failedTransactionLeavesNothingBehind(Database database) {
        assertThatThrownBy(() -> database.inTransaction(stores -> {
                    stores.accounts().add("rowan", "Rowan", "hash", Set.of(Role.STUDENT), Rows.NOON);
                    throw new IllegalArgumentException("stop");
                }))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("stop");

        assertThat(database.<Boolean>direct(stores -> stores.accounts().isEmpty()))
                .isTrue();
    }

    @EachDatabase
    void rowThatStaysTakenIsADuplicateAfterAFewTries(Database database) {
        Rows.student(database, "rowan");
        AtomicInteger tries = new AtomicInteger();

        assertThatThrownBy(() -> database.inTransaction(stores -> {
                    tries.incrementAndGet();
                    return stores.accounts().add("Rowan", "Another", "hash", Set.of(), Rows.NOON);
                }))
                .isInstanceOf(DuplicateException.class);
        assertThat(tries).hasValueBetween(2, 10);
    }

    @EachDatabase
    void answersUntilItIsClosed(Database database) {
        assertThat(database.answers()).isTrue();
        database.close();
        assertThat(database.answers()).isFalse();
    }

    @Test
    void fileInAFolderIsThereAgainAfterClosing(@TempDir Path folder) {
        DatabaseSettings settings = DatabaseSettings.inFolder(folder.resolve("new"), 2);
        try (Database database = Database.open(settings)) {
            Rows.student(database, "rowan");
        }
        try (Database database = Database.open(settings)) {
            assertThat(Rows.maybe(database, stores -> stores.accounts().named("ROWAN")))
                    .isPresent();
        }
    }
}
