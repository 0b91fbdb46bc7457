package org.manubrium.store;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsProvider;
import org.junit.jupiter.params.support.ParameterDeclarations;

/** Empty databases, one of each kind. */
public final class FreshDatabases implements ArgumentsProvider {
    private static final int POOL = 8;

    @Override
    public Stream<? extends Arguments> provideArguments(ParameterDeclarations parameters, ExtensionContext context) {
        return Stream.concat(
                Stream.of(Arguments.of(Named.of("H2", Database.open(DatabaseSettings.throwAway(POOL))))),
                postgres()
                        .map(url -> Arguments.of(
                                Named.of("PostgreSQL", Database.open(new DatabaseSettings(schemaIn(url), POOL)))))
                        .stream());
    }

    /** The JDBC address of a PostgreSQL to test on, if there is one. */
    public static Optional<String> postgres() {
        return Optional.ofNullable(System.getProperty("MANUBRIUM_TEST_PG", System.getenv("MANUBRIUM_TEST_PG")))
                .filter(url -> !url.isBlank());
    }

    /** Makes a schema there; the address that leads into it. */
    public static String schemaIn(String url) {
        String schema = "t_" + UUID.randomUUID().toString().replace("-", "");
        try (Connection connection = DriverManager.getConnection(url);
                Statement statement = connection.createStatement()) {
            statement.execute("create schema " + schema);
        } catch (SQLException e) {
            throw new IllegalStateException("no schema could be made at " + url, e);
        }
        return url + (url.contains("?") ? "&" : "?") + "currentSchema=" + schema;
    }
}
