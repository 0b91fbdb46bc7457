/**
 * Reads the tables under {@code db/tables} and builds the one immutable {@link org.manubrium.tables.Reference} from them.
 * The door is {@link org.manubrium.tables.Tables}; a bad row is reported with its file and line.
 */
@NullMarked
package org.manubrium.tables;

import org.jspecify.annotations.NullMarked;
