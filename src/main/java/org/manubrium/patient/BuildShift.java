package org.manubrium.patient;

/** By how much a build moves a quantity from its normal, in the quantity's own unit. */
public record BuildShift(Build build, String quantity, double shift, String source, String confidence) {}
