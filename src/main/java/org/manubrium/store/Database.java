package org.manubrium.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.migration.JavaMigration;
import org.jdbi.v3.core.Jdbi;
import org.manubrium.tables.TableFiles;

/** The database, brought up to the newest schema. Opened once by whoever wires the server, closed after its last request. */
public final class Database implements AutoCloseable {
    private static final int ATTEMPTS = 5;
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final HikariDataSource pool;
    private final Jdbi jdbi;

    private Database(HikariDataSource pool) {
        this.pool = pool;
        this.jdbi = Mapping.applyTo(Jdbi.create(pool));
    }

    /** Opens the pool and applies every migration that is missing. */
    public static Database open(DatabaseSettings settings) {
        return open(settings, new JavaMigration[0]);
    }

    /** The same, and fills the reference rows from these files if others are in them. */
    public static Database open(DatabaseSettings settings, TableFiles reference) {
        return open(settings, new ReferenceMigration(reference));
    }

    private static Database open(DatabaseSettings settings, JavaMigration... more) {
        HikariDataSource pool = new HikariDataSource(config(settings));
        try {
            migrate(pool, more);
            return new Database(pool);
        } catch (RuntimeException e) {
            pool.close();
            throw e;
        }
    }

    /**
     * Runs the work in one transaction and commits it. If another transaction got in the way (a deadlock, a row with
     * the same unique values, a row referred to that went away) it is rolled back and run again, a few times.
     *
     * @throws DuplicateException if a row with the same unique values is still there at the last try
     */
    public <T> T inTransaction(Work<T> work) {
        for (int attempt = 1; ; attempt++) {
            try {
                return jdbi.inTransaction(handle -> work.with(new Stores(handle)));
            } catch (RuntimeException e) {
                Conflict conflict = Conflict.in(e);
                if (conflict == Conflict.NONE) {
                    throw e;
                }
                if (attempt == ATTEMPTS) {
                    throw conflict == Conflict.DUPLICATE ? new DuplicateException(e) : e;
                }
            }
        }
    }

    /** Runs work that only reads, or writes one statement, without a transaction of its own. */
    public <T> T direct(Work<T> work) {
        return jdbi.withHandle(handle -> work.with(new Stores(handle)));
    }

    /** Whether the database answers. */
    public boolean answers() {
        try {
            return jdbi.withHandle(handle ->
                            handle.createQuery("select 1").mapTo(Integer.class).one())
                    == 1;
        } catch (RuntimeException e) {
            return false;
        }
    }

    /** For a measuring instrument to hang on to, before the first request. */
    public void measureWith(Object micrometerRegistry) {
        pool.setMetricRegistry(micrometerRegistry);
    }

    @Override
    public void close() {
        pool.close();
    }

    private static HikariConfig config(DatabaseSettings settings) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("manubrium");
        config.setJdbcUrl(settings.url());
        config.setMaximumPoolSize(settings.poolSize());
        config.setMinimumIdle(1);
        config.setConnectionTimeout(PATIENCE.toMillis());
        config.setTransactionIsolation("TRANSACTION_READ_COMMITTED");
        return config;
    }

    private static void migrate(DataSource pool, JavaMigration... more) {
        Flyway.configure()
                .dataSource(pool)
                .locations("classpath:db/migration")
                .javaMigrations(more)
                .load()
                .migrate();
    }
}
