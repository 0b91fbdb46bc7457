package org.manubrium.patient.trunk;

import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;
import org.manubrium.anatomy.Site;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;

/** How sore the roots of one side are when they are pulled: a fresh lesion hurts, an old one no longer does. */
public record Roots(Body body, Side side) {
    /** Roots that a raised straight leg pulls, with the share of the pull that each takes. */
    public static final Map<Segment, Double> SCIATIC = Map.of(Segment.L4, 0.5, Segment.L5, 1.0, Segment.S1, 1.0);

    /** Roots that a thigh drawn back pulls. */
    public static final Map<Segment, Double> FEMORAL = Map.of(Segment.L2, 0.8, Segment.L3, 1.0, Segment.L4, 1.0);

    /** The sorest of the roots that are pulled, 0..1. */
    public double sore(Map<Segment, Double> pulled) {
        double sorest = 0;
        for (Ailment ailment : body.ailments()) {
            for (Lesion lesion : ailment.lesions()) {
                double soreness = lesion.loss() * fresh(lesion.onset().days()) * pull(lesion.site(), pulled);
                sorest = Math.max(sorest, soreness);
            }
        }
        return sorest;
    }

    private double pull(Site lesion, Map<Segment, Double> pulled) {
        return pulled.entrySet().stream()
                .filter(entry -> lesion.covers(site(entry.getKey())))
                .mapToDouble(Map.Entry::getValue)
                .max()
                .orElse(0);
    }

    private Site site(Segment segment) {
        return Site.at("root", segment, side);
    }

    private double fresh(double days) {
        double sore = body.physiology().constant("root.sore-days");
        double healed = body.physiology().constant("root.healed-days");
        return Math.max(0, Math.min(1, (healed - days) / (healed - sore)));
    }

    /** The roots themselves, as the way on which the sign depends. */
    public List<Pathway> ways(Map<Segment, Double> pulled) {
        return pulled.keySet().stream()
                .sorted()
                .map(segment -> Pathway.at(site(segment)))
                .toList();
    }
}
