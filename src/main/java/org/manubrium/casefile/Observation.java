package org.manubrium.casefile;

/** Something told before the examination, such as a temperature. */
public record Observation(String label, String text) {}
