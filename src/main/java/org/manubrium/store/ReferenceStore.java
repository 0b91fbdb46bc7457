package org.manubrium.store;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** The reference tables as rows. Only read: they are filled when the database is opened. */
public final class ReferenceStore {
    private final Handle handle;

    ReferenceStore(Handle handle) {
        this.handle = handle;
    }

    /** The names of the tables, in order. */
    public List<String> tables() {
        return handle.createQuery("select distinct table_name from reference_row order by table_name")
                .mapTo(String.class)
                .list();
    }

    /** The rows of one table, as they stand in its files. */
    public List<ReferenceRow> rows(String table) {
        return handle.createQuery("select table_name, file, line, cells, source, confidence from reference_row"
                        + " where table_name = :table order by file, line")
                .bind("table", table)
                .mapTo(ReferenceRow.class)
                .list();
    }
}
