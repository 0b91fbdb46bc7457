/**
 * What a student did, one event at a time, in the order in which the server took it. The bedside may know these and
 * nothing else of marking.
 */
@NullMarked
package org.manubrium.marking.event;

import org.jspecify.annotations.NullMarked;
