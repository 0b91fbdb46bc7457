package org.manubrium.school.cohort;

import org.manubrium.store.SetCase;

/** A set case in a list: with its title, its version, and how many students have begun it and handed it in. */
public record SetLine(SetCase set, String title, int version, long begun, long handedIn) {}
