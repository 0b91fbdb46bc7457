package org.manubrium.patient;

/** A number of the model, with its unit and where it comes from. */
public record Constant(String name, double amount, String unit, String source, String confidence) {}
