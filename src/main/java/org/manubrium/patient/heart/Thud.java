package org.manubrium.patient.heart;

/**
 * A short sound of the heart.
 *
 * @param id as it is called in the tables
 * @param ms when it comes, in milliseconds from the first sound; negative before it
 * @param level where it is loudest, dB against a healthy first sound at the apex
 */
public record Thud(String id, double ms, double level) {
    static final double SILENT = -60;
}
