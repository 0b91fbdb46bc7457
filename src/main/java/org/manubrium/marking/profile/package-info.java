/**
 * How an attempt went, beside its mark and no part of it: how the differential narrowed, and how well the patient was handled.
 * The door is {@link org.manubrium.marking.profile.ProfileMaker}.
 */
@NullMarked
package org.manubrium.marking.profile;

import org.jspecify.annotations.NullMarked;
