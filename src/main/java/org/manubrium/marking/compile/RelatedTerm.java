package org.manubrium.marking.compile;

/** Two terms of which one earns half when the other is right; holds both ways. */
public record RelatedTerm(String term, String related, String source, String confidence, String note) {}
