/**
 * Case files: readable YAML that describes one invented patient. The door is
 * {@link org.manubrium.casefile.CaseFile#read}: it gives the case, or every problem with its line, its rule and what was
 * expected there. {@code cases/README.md} documents the form.
 */
@NullMarked
package org.manubrium.casefile;

import org.jspecify.annotations.NullMarked;
