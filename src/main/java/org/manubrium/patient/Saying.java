package org.manubrium.patient;

/** What the patient says when at least so much of a feeling gets through. */
public record Saying(String about, double atLeast, String words, String source, String confidence) {}
