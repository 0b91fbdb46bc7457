package org.manubrium.patient.heart;

import java.util.Locale;
import java.util.Set;

/** Where blood can rush so that it is heard, with the quantities on which that depends. */
public enum JetKind {
    AORTIC_OUT(
            Timing.EJECTION,
            "aortic-valve-area",
            "aortic-valve-roughness",
            "outflow-vibration",
            "aortic-leak",
            "output-demand",
            "thyroid-state"),
    OUTFLOW(Timing.EJECTION, "outflow-obstruction"),
    PULMONARY_OUT(Timing.EJECTION, "pulmonary-valve-area", "atrial-shunt", "output-demand", "thyroid-state"),
    COARCTATION(Timing.EJECTION, "aortic-coarctation"),
    MITRAL_LEAK(Timing.LEAK, "mitral-leak", "mitral-slack"),
    TRICUSPID_LEAK(Timing.LEAK, "tricuspid-leak", "right-heart-reserve", "pulmonary-pressure"),
    VENTRICULAR_DEFECT(Timing.LEAK, "ventricular-defect"),
    AORTIC_LEAK(Timing.AFTER_SECOND, "aortic-leak"),
    PULMONARY_LEAK(Timing.AFTER_SECOND, "pulmonary-leak", "pulmonary-pressure"),
    MITRAL_IN(Timing.FILLING, "mitral-valve-area", "ventricular-defect", "mitral-leak", "aortic-leak"),
    TRICUSPID_IN(Timing.FILLING, "tricuspid-stenosis", "atrial-shunt"),
    DUCT(Timing.CONTINUOUS, "arterial-duct");

    /** When in the beat it runs. */
    public enum Timing {
        EJECTION,
        LEAK,
        AFTER_SECOND,
        FILLING,
        CONTINUOUS;

        public boolean systolic() {
            return this == EJECTION || this == LEAK;
        }
    }

    private final Timing timing;

    @SuppressWarnings("ImmutableEnumChecker") // Set.of cannot be changed
    private final Set<String> quantities;

    private final String id = name().toLowerCase(Locale.ROOT).replace('_', '-');

    private final String low = "jet." + id + ".low";
    private final String high = "jet." + id + ".high";
    private final String usual = "jet." + id + ".gradient";

    JetKind(Timing timing, String... quantities) {
        this.timing = timing;
        this.quantities = Set.of(quantities);
    }

    public Timing timing() {
        return timing;
    }

    public Set<String> quantities() {
        return quantities;
    }

    /** As it is called in the tables. */
    String id() {
        return id;
    }

    /** The constant that holds the lower edge of its noise. */
    String low() {
        return low;
    }

    /** The constant that holds the upper edge of its noise. */
    String high() {
        return high;
    }

    /** The constant that holds the pressure that usually drives it. */
    String usual() {
        return usual;
    }
}
