/**
 * The credit rules, one class each. Every rule gives 0 to 1, gives 1 to the truth, never gives more to an answer further
 * from it, and does not pay for ticking everything.
 */
@NullMarked
package org.manubrium.marking.credit;

import org.jspecify.annotations.NullMarked;
