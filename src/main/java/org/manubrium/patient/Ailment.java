package org.manubrium.patient;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Site;

/**
 * One thing that ails the patient: lesions, and quantities moved from their normal value.
 *
 * @param name as the case says it: the name of a condition, or of a site
 * @param old whether it is an old leftover that explains nothing new
 * @param shifts by how much each quantity is moved, in the quantity's own unit
 */
public record Ailment(String name, boolean old, List<Lesion> lesions, Map<String, Double> shifts) {
    public Ailment mirrored() {
        return new Ailment(name, old, lesions.stream().map(Lesion::mirrored).toList(), otherSide());
    }

    /** The same ailment without its lesions at these very sites and its shifts of these quantities. */
    public Ailment mended(Set<Site> sites, Set<String> quantities) {
        Map<String, Double> left = new HashMap<>(shifts);
        left.keySet().removeAll(quantities);
        List<Lesion> kept = lesions.stream()
                .filter(lesion -> !sites.contains(lesion.site()))
                .toList();
        return new Ailment(name, old, kept, Map.copyOf(left));
    }

    /** The same at another severity: each loss and each shift is multiplied by it. */
    public Ailment scaled(double severity) {
        Map<String, Double> scaled = new HashMap<>();
        shifts.forEach((id, shift) -> scaled.put(id, shift * severity));
        List<Lesion> less = lesions.stream()
                .map(lesion -> lesion.withLoss(Math.min(1, lesion.loss() * severity)))
                .toList();
        return new Ailment(name, old, less, Map.copyOf(scaled));
    }

    private Map<String, Double> otherSide() {
        Map<String, Double> mirrored = new HashMap<>();
        shifts.forEach((id, shift) -> mirrored.put(Quantity.mirrored(id), shift));
        return Map.copyOf(mirrored);
    }
}
