package org.manubrium.tables;

import java.util.Map;

/** One row of a table file as it is written, with where it stands. */
public record Cells(String table, String file, long line, Map<String, String> byColumn) {}
