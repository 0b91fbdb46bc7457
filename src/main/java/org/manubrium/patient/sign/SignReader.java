package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/** Reads the signs of one system off a body. Adding a system is adding one of these and its rows. */
public interface SignReader {
    /** The name that manoeuvres use before the colon of what they read. */
    String name();

    /** What is there to be found when the manoeuvre is done in this way. */
    Finding find(Body body, Manoeuvre manoeuvre, Probe probe);

    /** What the examiner sees, hears or feels of it. */
    Appearance show(Body body, Manoeuvre manoeuvre, Probe probe);

    /** The pathways that carry the sign; empty if none does. */
    List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe);

    /** The quantities that the sign depends on, by id. */
    default Set<String> quantities(Manoeuvre manoeuvre) {
        return Set.of();
    }

    /** The quantities that this item's sign depends on, by id. */
    default Set<String> quantities(Body body, Manoeuvre manoeuvre, Probe probe) {
        return quantities(manoeuvre);
    }

    /**
     * Whether this finding would pass as normal, given what the other side shows and what the same person would show in
     * health.
     */
    boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding);
}
