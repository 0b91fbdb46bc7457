package org.manubrium.patient.vessel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.manubrium.anatomy.Side;

/** The arteries that are felt or cuffed, each fed by another. */
public enum Artery {
    SUBCLAVIAN,
    BRACHIAL(SUBCLAVIAN),
    RADIAL(BRACHIAL),
    ILIAC,
    FEMORAL(ILIAC),
    SUPERFICIAL_FEMORAL(FEMORAL),
    POPLITEAL(SUPERFICIAL_FEMORAL),
    POSTERIOR_TIBIAL(POPLITEAL),
    ANTERIOR_TIBIAL(POPLITEAL);

    private final Optional<Artery> from;
    private final String id = name().toLowerCase(Locale.ROOT).replace('_', '-');

    Artery() {
        this.from = Optional.empty();
    }

    Artery(Artery from) {
        this.from = Optional.of(from);
    }

    /** The artery that is felt at a place: the dorsalis pedis goes on from the anterior tibial. */
    public static Artery at(String place) {
        return place.equals("dorsalis-pedis")
                ? ANTERIOR_TIBIAL
                : valueOf(place.replace('-', '_').toUpperCase(Locale.ROOT));
    }

    /** This artery and all that feed it, itself first. */
    List<Artery> course() {
        List<Artery> course = new ArrayList<>(List.of(this));
        from.ifPresent(feeding -> course.addAll(feeding.course()));
        return course;
    }

    /** Whether it lies beyond the arch and what may narrow the aorta there. */
    boolean beyondTheArch() {
        return course().contains(ILIAC);
    }

    /** The quantity that says how much of the pulse is lost across it. */
    String narrow(Side side) {
        return "artery." + side.word() + "." + id + ".narrow";
    }
}
