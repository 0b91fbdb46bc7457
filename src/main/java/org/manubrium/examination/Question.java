package org.manubrium.examination;

/** Something asked of the patient, and the seconds it takes. */
public record Question(String id, String name, int seconds, String source, String confidence) {}
