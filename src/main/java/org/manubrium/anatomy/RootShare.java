package org.manubrium.anatomy;

/** The share that one root has in a muscle, a reflex or a patch of skin; the shares of one owner sum to 1. */
public record RootShare(String owner, Segment root, double weight, String source, String confidence) {}
