package org.manubrium.learning;

/** One time a student was asked a fact: when, in seconds from any fixed moment, and whether the answer was right. */
public record Met(String fact, double at, boolean right) {}
