/**
 * The reference key of one case version, frozen: everything marking needs and nothing that lives. The door is
 * {@link org.manubrium.marking.key.CompiledKey}. Records only.
 */
@NullMarked
package org.manubrium.marking.key;

import org.jspecify.annotations.NullMarked;
