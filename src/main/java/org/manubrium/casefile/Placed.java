package org.manubrium.casefile;

/** Something read from a file, and the line it stands on. */
record Placed<T>(T thing, int line) {}
