package org.manubrium.store;

import java.nio.file.Path;
import java.util.UUID;

/**
 * Where the rows are.
 *
 * @param url a JDBC address of H2 or PostgreSQL; user and password may be part of it
 * @param poolSize connections held open at most
 */
public record DatabaseSettings(String url, int poolSize) {
    // Without WRITE_DELAY=0 a killed process loses the last half second of acknowledged commits. The database is closed
    // by our own shutdown, after the last request, not by H2's hook beside it.
    private static final String H2_DURABLE =
            ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;LOCK_TIMEOUT=10000;TRACE_LEVEL_FILE=0";

    /** An embedded file in a folder, which is made if need be. */
    public static DatabaseSettings inFolder(Path folder, int poolSize) {
        return at("jdbc:h2:file:" + folder.toAbsolutePath().resolve("manubrium"), poolSize);
    }

    /** Any database; one of H2's is made durable unless its address says how it is to be. */
    public static DatabaseSettings at(String url, int poolSize) {
        boolean left = !url.startsWith("jdbc:h2:") || url.startsWith("jdbc:h2:mem:") || url.contains("WRITE_DELAY");
        return new DatabaseSettings(left ? url : url + H2_DURABLE, poolSize);
    }

    /** A database of its own that is gone with the process. */
    public static DatabaseSettings throwAway(int poolSize) {
        return new DatabaseSettings(
                "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000", poolSize);
    }
}
