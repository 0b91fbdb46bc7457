package org.manubrium.examination;

/** How the patient is placed on or beside the couch. */
public record Position(String id, String name, String caution, String source, String confidence) {}
