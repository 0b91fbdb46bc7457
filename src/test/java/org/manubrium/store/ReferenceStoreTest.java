package org.manubrium.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.manubrium.tables.TableFiles;

class ReferenceStoreTest {
    @ParameterizedTest
    @MethodSource("addresses")
    void everyRowOfEveryShippedTableIsThere(String url) {
        TableFiles files = TableFiles.shipped();

        try (Database database = Database.open(new DatabaseSettings(url, 2), files)) {
            List<String> tables =
                    Rows.list(database, stores -> stores.reference().tables());
            assertThat(tables).contains("sources").hasSizeGreaterThan(5);
            int rows = tables.stream()
                    .mapToInt(table -> Rows.list(
                                    database, stores -> stores.reference().rows(table))
                            .size())
                    .sum();
            assertThat(rows).isEqualTo(files.cells().size());
        }
    }

    @Test
    void changedFileReplacesTheRowsAndAnUnchangedOneLeavesThem() {
        DatabaseSettings settings = new DatabaseSettings("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", 2);
        TableFiles files = TableFiles.shipped();
        String last = files.files("sources").get(0);
        TableFiles shorter = files.with(last, text -> text.strip().replaceFirst("\\R[^\\r\\n]*$", "\n"));

        int before = sources(settings, files).size();
        List<ReferenceRow> after = sources(settings, shorter);

        assertThat(after).hasSize(before - 1).isEqualTo(sources(settings, shorter));
        assertThat(sources(settings, files)).hasSize(before);
    }

    static List<String> addresses() {
        Optional<String> postgres = FreshDatabases.postgres().map(FreshDatabases::schemaIn);
        String h2 = "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1";
        return postgres.map(url -> List.of(h2, url)).orElseGet(() -> List.of(h2));
    }

    private static List<ReferenceRow> sources(DatabaseSettings settings, TableFiles files) {
        try (Database database = Database.open(settings, files)) {
            return database.direct(stores -> stores.reference().rows("sources"));
        }
    }
}
