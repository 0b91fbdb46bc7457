/**
 * Records in and out of the house, in the forms that others read: events, keys and mark sheets as JSON. A bad record is
 * refused with the field and what was expected.
 */
@NullMarked
package org.manubrium.exchange;

import org.jspecify.annotations.NullMarked;
