package org.manubrium.patient;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Site;

/** A person and what ails them. Answers what still passes a pathway, and what a quantity stands at. Immutable. */
public final class Body {
    private final Anatomy anatomy;
    private final Physiology physiology;
    private final Person person;
    private final List<Ailment> ailments;
    private final Map<String, List<Lesion>> byStructure = new HashMap<>();

    public Body(Anatomy anatomy, Physiology physiology, Person person, List<Ailment> ailments) {
        this.anatomy = anatomy;
        this.physiology = physiology;
        this.person = person;
        this.ailments = List.copyOf(ailments);
        for (Ailment ailment : ailments) {
            for (Lesion lesion : ailment.lesions()) {
                byStructure
                        .computeIfAbsent(lesion.site().structure(), s -> new ArrayList<>())
                        .add(lesion);
            }
        }
    }

    public Anatomy anatomy() {
        return anatomy;
    }

    public Physiology physiology() {
        return physiology;
    }

    public Person person() {
        return person;
    }

    public List<Ailment> ailments() {
        return ailments;
    }

    /** The same person with other ailments. */
    public Body with(List<Ailment> others) {
        return new Body(anatomy, physiology, person, others);
    }

    /** The same person in health. */
    public Body healthy() {
        return with(List.of());
    }

    /** The same body without one of its ailments. */
    public Body without(Ailment ailment) {
        return with(ailments.stream().filter(a -> !a.equals(ailment)).toList());
    }

    /** Right and left exchanged, in the lesions and in the natural variation. */
    public Body mirrored() {
        return new Body(
                anatomy,
                physiology,
                person.mirrored(),
                ailments.stream().map(Ailment::mirrored).toList());
    }

    /** The share that passes one site, 0..1: losses there multiply. */
    public double kept(Site site) {
        return kept(site, Phase.LOSS);
    }

    /** The share that passes one site when each lesion counts only as far as it shows in this phase. */
    public double kept(Site site, Phase phase) {
        double passed = 1;
        for (Lesion lesion : byStructure.getOrDefault(site.structure(), List.of())) {
            if (lesion.site().covers(site)) {
                passed *= 1 - lesion.loss() * share(lesion, phase);
            }
        }
        return passed;
    }

    private double share(Lesion lesion, Phase phase) {
        return switch (phase) {
            case LOSS -> 1;
            case SHOCK -> physiology.shock(division(lesion), lesion);
            case RELEASE -> physiology.release(division(lesion), lesion);
        };
    }

    private String division(Lesion lesion) {
        return anatomy.structure(lesion.site().structure()).division();
    }

    /** What still passes a pathway, 0..1. */
    public double conduction(Pathway pathway) {
        return pathway.conduction(this::kept);
    }

    /** What a pathway lacks, 0..1, counting each lesion only as far as it shows in this phase. */
    public double lost(Pathway pathway, Phase phase) {
        return 1 - pathway.conduction(site -> kept(site, phase));
    }

    /** A quantity in its own unit: normal, the person's own variation, and what the ailments add, within its limits. */
    public double quantity(String id) {
        Quantity quantity = physiology.quantity(id);
        return Math.max(quantity.least(), Math.min(quantity.most(), unbounded(id)));
    }

    /** A quantity as {@link #quantity}, before its limits are minded. */
    public double unbounded(String id) {
        Quantity quantity = physiology.quantity(id);
        double amount =
                quantity.normal() + quantity.spread() * person.variation().of(quantity.trait(), quantity.side());
        for (Ailment ailment : ailments) {
            amount += ailment.shifts().getOrDefault(id, 0.0);
        }
        return amount;
    }
}
