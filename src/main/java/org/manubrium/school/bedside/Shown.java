package org.manubrium.school.bedside;

import org.manubrium.marking.event.Event;

/**
 * An event as it was taken, with what it showed.
 *
 * @param clock after the event
 * @param shown the appearance as JSON, kept to the letter; "" if the event shows nothing
 */
public record Shown(String key, int seq, Event event, BedsideTime clock, String shown) {}
