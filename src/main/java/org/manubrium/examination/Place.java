package org.manubrium.examination;

/**
 * What one reading of a manoeuvre is about when it has several: a point of the skin, a pressure, a moment.
 *
 * @param unit the unit of its reading where it differs from the manoeuvre's; else blank
 */
public record Place(String id, String name, String unit) {
    public Place(String id, String name) {
        this(id, name, "");
    }
}
