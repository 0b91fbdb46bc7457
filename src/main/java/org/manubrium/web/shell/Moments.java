package org.manubrium.web.shell;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Optional;

/** Times as people read and write them, in the time zone of the server. */
public final class Moments {
    private static final DateTimeFormatter READ = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.UK);
    private static final DateTimeFormatter WRITTEN = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.UK);

    private final ZoneId zone;

    public Moments(ZoneId zone) {
        this.zone = zone;
    }

    /** "3 Feb 2027, 09:00". */
    public String read(Instant instant) {
        return READ.format(instant.atZone(zone));
    }

    /** What a field of type datetime-local holds. */
    public String written(Instant instant) {
        return WRITTEN.format(instant.atZone(zone));
    }

    /** What somebody put into such a field; empty if it is not a time. */
    public Optional<Instant> parse(String field) {
        try {
            return Optional.of(LocalDateTime.parse(field).atZone(zone).toInstant());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** The name of the zone, to stand beside a field. */
    public String zoneName() {
        return zone.getDisplayName(TextStyle.FULL, Locale.UK);
    }
}
