package org.manubrium.patient.heart;

/** The arterial pressures at rest in millimetres of mercury, and the rate of the heart in beats a minute. */
public record Pressures(double systolic, double diastolic, double rate) {}
