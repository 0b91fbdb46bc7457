package org.manubrium.patient;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Side;

/** The named conditions, and the ailment that each becomes in a patient. */
public final class Conditions {
    private final Anatomy anatomy;
    private final Physiology physiology;
    private final SaidStates states;
    private final Map<String, Condition> conditions = new LinkedHashMap<>();

    public Conditions(Anatomy anatomy, Physiology physiology, Collection<Condition> rows, List<StateName> states) {
        this.anatomy = anatomy;
        this.physiology = physiology;
        this.states = new SaidStates(physiology, states);
        rows.forEach(row -> conditions.put(row.id(), row));
    }

    public Collection<Condition> all() {
        return conditions.values();
    }

    public Optional<Condition> condition(String id) {
        return Optional.ofNullable(conditions.get(id));
    }

    /**
     * A lesion as it is said of a patient: what a site loses, or the state of a part such as "left lower lobe consolidation".
     *
     * @throws org.manubrium.anatomy.UnknownSite when the text names neither
     */
    public Ailment lesion(String site, double loss, Onset onset, boolean old) {
        return states.shifts(site, loss)
                .map(shifts -> new Ailment(site, old, List.of(), shifts))
                .orElseGet(() -> new Ailment(site, old, anatomy.lesions(site, loss, onset), Map.of()));
    }

    /**
     * A condition in one patient. Whether the side and level suit it is the caller's to check.
     *
     * @param severity 0..1, by which every loss and shift is scaled
     */
    public Ailment ailment(
            Condition condition, Side side, Optional<String> level, double severity, Optional<Onset> onset) {
        Onset began = onset.or(() -> Onset.parse(condition.onset()))
                .orElseThrow(() -> new IllegalArgumentException(
                        "condition " + condition.id() + " has no onset that can be read: " + condition.onset()));
        List<Lesion> lesions = new ArrayList<>();
        Map<String, Double> shifts = new HashMap<>();
        for (Condition.Effect effect : condition.effects()) {
            if (effect.quantity().isBlank()) {
                lesions.addAll(anatomy.lesions(site(effect.site(), side, level), effect.amount() * severity, began));
            } else {
                double amount = effect.amount() * severity;
                physiology
                        .parts(quantity(effect.quantity(), side, level))
                        .forEach((id, share) -> shifts.merge(id, amount * share, Double::sum));
            }
        }
        return new Ailment(said(condition, side, level), condition.old(), List.copyOf(lesions), Map.copyOf(shifts));
    }

    /** How a condition is said of a patient: "root compression, C7, left". */
    public static String said(Condition condition, Side side, Optional<String> level) {
        return condition.name() + level.map(l -> ", " + l).orElse("") + (side == Side.NONE ? "" : ", " + side.word());
    }

    /** A quantity's id with this side and level filled in; a level's words are joined by hyphens. */
    public static String quantity(String template, Side side, Optional<String> level) {
        return site(template, side, level.map(said -> said.replace(' ', '-')));
    }

    /** A site's words with this side and level filled in. */
    public static String site(String template, Side side, Optional<String> level) {
        return template.replace("@side", side.word())
                .replace("@opposite", side.opposite().word())
                .replace("@level", level.orElse(""));
    }

    /** A quantity in words; what is no quantity, with blanks for its dots and dashes. */
    public String inWords(String quantity) {
        return physiology.hasQuantity(quantity)
                ? physiology.quantity(quantity).name()
                : quantity.replaceAll("[.-]", " ");
    }
}
