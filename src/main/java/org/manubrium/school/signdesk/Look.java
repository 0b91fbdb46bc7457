package org.manubrium.school.signdesk;

import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Probe;

/** One item as it is shown, how it reads in words, and whether that passes as normal. */
public record Look(Probe probe, Appearance shown, String reading, boolean normal) {}
