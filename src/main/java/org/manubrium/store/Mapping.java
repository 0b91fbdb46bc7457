package org.manubrium.store;

import java.sql.Types;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.argument.AbstractArgumentFactory;
import org.jdbi.v3.core.argument.Argument;
import org.jdbi.v3.core.config.ConfigRegistry;
import org.jdbi.v3.core.mapper.ColumnMapper;
import org.jdbi.v3.core.mapper.reflect.ConstructorMapper;

/**
 * How rows become records: by the names of their components. Instants travel as UTC offsets: as java.sql.Timestamp they
 * would pass through the machine's time zone, and the hour that comes twice in autumn is ambiguous there.
 */
final class Mapping {
    private Mapping() {}

    static Jdbi applyTo(Jdbi jdbi) {
        jdbi.registerArgument(new InstantArgument());
        ColumnMapper<Instant> instant =
                (row, column, context) -> instantOrNull(row.getObject(column, OffsetDateTime.class));
        jdbi.registerColumnMapper(Instant.class, instant);
        for (Class<?> row : Stores.ROWS) {
            jdbi.registerRowMapper(ConstructorMapper.factory(row));
        }
        return jdbi;
    }

    @SuppressWarnings("NullAway") // jdbi wants null for SQL's null and makes the Optional itself
    private static Instant instantOrNull(OffsetDateTime time) {
        return time == null ? null : time.toInstant();
    }

    private static final class InstantArgument extends AbstractArgumentFactory<Instant> {
        InstantArgument() {
            super(Types.TIMESTAMP_WITH_TIMEZONE);
        }

        @Override
        protected Argument build(Instant instant, ConfigRegistry config) {
            return (position, statement, context) -> statement.setObject(position, instant.atOffset(ZoneOffset.UTC));
        }
    }
}
