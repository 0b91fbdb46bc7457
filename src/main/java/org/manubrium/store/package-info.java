/**
 * All SQL: records in, records out. One class per table or concept, reached through {@link org.manubrium.store.Stores}
 * inside the scope that {@link org.manubrium.store.Database} opens. Every statement runs unchanged on H2 (regular mode)
 * and PostgreSQL.
 */
@NullMarked
package org.manubrium.store;

import org.jspecify.annotations.NullMarked;
