package org.manubrium.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;
import org.jspecify.annotations.Nullable;
import org.manubrium.tables.Cells;
import org.manubrium.tables.TableFiles;

/** Fills the reference rows. Repeatable: Flyway runs it when the checksum, which is that of the files, is another. */
final class ReferenceMigration implements JavaMigration {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String INSERT = "insert into reference_row (table_name, file, line, cells, source, confidence)"
            + " values (?, ?, ?, ?, ?, ?)";

    private final TableFiles files;

    ReferenceMigration(TableFiles files) {
        this.files = files;
    }

    @Override
    @SuppressWarnings("NullAway") // Flyway's sign of a repeatable migration is a version of null
    public @Nullable MigrationVersion getVersion() {
        return null;
    }

    @Override
    public String getDescription() {
        return "Reference rows";
    }

    @Override
    public Integer getChecksum() {
        return files.hash().hashCode();
    }

    @Override
    public boolean canExecuteInTransaction() {
        return true;
    }

    @Override
    public void migrate(Context context) throws SQLException, JsonProcessingException {
        Connection connection = context.getConnection();
        try (Statement clear = connection.createStatement();
                PreparedStatement insert = connection.prepareStatement(INSERT)) {
            clear.executeUpdate("delete from reference_row");
            for (Cells row : files.cells()) {
                set(insert, row);
                insert.addBatch();
            }
            insert.executeBatch();
        }
    }

    private static void set(PreparedStatement insert, Cells row) throws SQLException, JsonProcessingException {
        insert.setString(1, row.table());
        insert.setString(2, row.file());
        insert.setInt(3, Math.toIntExact(row.line()));
        insert.setString(4, JSON.writeValueAsString(row.byColumn()));
        insert.setString(5, row.byColumn().getOrDefault("source", ""));
        insert.setString(6, row.byColumn().getOrDefault("confidence", ""));
    }
}
