package org.manubrium.school;

import java.util.LinkedHashMap;
import java.util.Map;

/** A form that will not do: for each field with a fault, a sentence for whoever filled it in. */
public final class Misfilled extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final LinkedHashMap<String, String> faults;

    private Misfilled(Map<String, String> faults) {
        super(faults.toString());
        this.faults = new LinkedHashMap<>(faults);
    }

    /** One field, one fault. */
    public static Misfilled in(String field, String sentence) {
        return new Misfilled(Map.of(field, sentence));
    }

    /** Throws if there is any fault. */
    public static void refuse(Map<String, String> faults) {
        if (!faults.isEmpty()) {
            throw new Misfilled(faults);
        }
    }

    /** Field to sentence. */
    public Map<String, String> faults() {
        return Map.copyOf(faults);
    }
}
