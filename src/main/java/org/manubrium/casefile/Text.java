package org.manubrium.casefile;

/** A text in a file, and the line it stands on. */
record Text(String words, int line) {}
