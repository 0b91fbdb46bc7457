/**
 * Sites, segments, nerves, tracts and the pathways through them. The door is {@link org.manubrium.anatomy.Anatomy}: it
 * reads a site as a clinician says it, lists the structures that lie in a region, and lays the pathway from a stimulus to
 * its visible effect. Pure: everything comes from tables handed to the constructor.
 */
@NullMarked
package org.manubrium.anatomy;

import org.jspecify.annotations.NullMarked;
