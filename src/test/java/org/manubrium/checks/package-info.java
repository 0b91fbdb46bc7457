/**
 * Statements of the texts, each by its id with its source beside it. Every one goes from a lesion through the examination
 * to a reading; none reads a table back.
 */
package org.manubrium.checks;
