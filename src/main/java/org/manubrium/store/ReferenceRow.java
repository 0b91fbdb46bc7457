package org.manubrium.store;

/**
 * One row of a reference table, for browsing.
 *
 * @param file its path below {@code db/tables}, and the line in it
 * @param cells JSON object, column by column
 * @param source ids of its sources; "" in the tables that are about sources themselves
 */
public record ReferenceRow(String tableName, String file, int line, String cells, String source, String confidence) {}
