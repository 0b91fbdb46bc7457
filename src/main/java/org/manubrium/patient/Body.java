package org.manubrium.patient;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.Footprint;
import org.manubrium.anatomy.Kept;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Site;

/** A person and what ails them. Answers what still passes a pathway, and what a quantity stands at. Immutable. */
public final class Body {
    /** About so many things are asked of a body that is examined at all. */
    private static final int ASKED = 500;

    private final Anatomy anatomy;
    private final Physiology physiology;
    private final Person person;
    private final List<Ailment> ailments;
    private final Map<String, List<Held>> byStructure = new HashMap<>();
    private final Footprint hurt;
    private final int lesions;
    private final Consumer<String> asked;
    private final boolean watched;
    private final Map<String, Double> amounts = new ConcurrentHashMap<>();
    private final Map<Phase, double[]> shares = new ConcurrentHashMap<>();
    private final Map<Object, Object> worked = new ConcurrentHashMap<>(ASKED);

    public Body(Anatomy anatomy, Physiology physiology, Person person, List<Ailment> ailments) {
        this(anatomy, physiology, person, ailments, id -> {}, false);
    }

    private Body(
            Anatomy anatomy,
            Physiology physiology,
            Person person,
            List<Ailment> ailments,
            Consumer<String> asked,
            boolean watched) {
        this.asked = asked;
        this.watched = watched;
        this.anatomy = anatomy;
        this.physiology = physiology;
        this.person = person;
        this.ailments = List.copyOf(ailments);
        Footprint everywhere = Footprint.NOWHERE;
        int count = 0;
        for (int a = 0; a < ailments.size(); a++) {
            for (Lesion lesion : ailments.get(a).lesions()) {
                everywhere = everywhere.and(Footprint.ofLesion(lesion.site()));
                byStructure
                        .computeIfAbsent(lesion.site().structure(), s -> new ArrayList<>())
                        .add(new Held(lesion, a, count++));
            }
        }
        this.hurt = everywhere;
        this.lesions = count;
    }

    /** A lesion, the number of the ailment it belongs to, and its own. */
    private record Held(Lesion lesion, int ailment, int number) {}

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

    /** The same body, which tells of each quantity that is asked of it. */
    public Body watched(Consumer<String> told) {
        return new Body(anatomy, physiology, person, ailments, told, true);
    }

    /**
     * What follows from this body alone, worked out once and kept with it.
     *
     * @param key what is worked out, with all that it depends on besides the body; of a type of its own
     */
    public <T> T once(Object key, Class<T> type, Supplier<T> work) {
        if (watched) {
            return work.get();
        }
        Object known = worked.get(key);
        if (known == null) {
            T found = work.get();
            worked.put(key, found);
            return found;
        }
        return type.cast(known);
    }

    /** The same person with some of the ailments, by their numbers. */
    private record Only(List<Integer> ailments) {}

    /** The same person with those of the ailments for which something is so. */
    public Body only(Predicate<Ailment> some) {
        List<Integer> numbers = IntStream.range(0, ailments.size())
                .filter(a -> some.test(ailments.get(a)))
                .boxed()
                .toList();
        return once(
                new Only(numbers),
                Body.class,
                () -> with(numbers.stream().map(ailments::get).toList()));
    }

    /** The same person in health. */
    public Body healthy() {
        return only(ailment -> false);
    }

    /** The same body without one of its ailments. */
    public Body without(Ailment ailment) {
        return only(other -> !other.equals(ailment));
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
        for (Held held : byStructure.getOrDefault(site.structure(), List.of())) {
            if (held.lesion.site().covers(site)) {
                passed *= 1 - held.lesion.loss() * share(held, phase);
            }
        }
        return passed;
    }

    /** Each ailment counts once along a stretch of tract, as much as it takes at its worst. */
    private double along(List<Site> stretch, Phase phase) {
        List<Held> there = stretch.isEmpty()
                ? List.of()
                : byStructure.getOrDefault(stretch.get(0).structure(), List.of());
        if (there.isEmpty()) {
            return 1;
        }
        double[] worst = new double[ailments.size()];
        for (Held held : there) {
            if (held.lesion.site().coversAny(stretch)) {
                worst[held.ailment] = Math.max(worst[held.ailment], held.lesion.loss() * share(held, phase));
            }
        }
        double passed = 1;
        for (double loss : worst) {
            passed *= 1 - loss;
        }
        return passed;
    }

    private Kept kept(Phase phase) {
        return new Kept() {
            @Override
            public double at(Site site) {
                return kept(site, phase);
            }

            @Override
            public boolean touches(Footprint footprint) {
                return footprint.meets(hurt);
            }

            @Override
            public double along(List<Site> stretch) {
                return Body.this.along(stretch, phase);
            }
        };
    }

    private double share(Held held, Phase phase) {
        return phase == Phase.LOSS ? 1 : shares.computeIfAbsent(phase, this::shares)[held.number];
    }

    private double[] shares(Phase phase) {
        double[] all = new double[lesions];
        byStructure
                .values()
                .forEach(there -> there.forEach(held -> {
                    all[held.number] = phase == Phase.SHOCK
                            ? physiology.shock(division(held.lesion), held.lesion)
                            : physiology.release(division(held.lesion), held.lesion);
                }));
        return all;
    }

    /** Whether anything of what ails the patient shows in this phase. */
    public boolean shows(Phase phase) {
        return byStructure.values().stream()
                .flatMap(List::stream)
                .anyMatch(held -> held.lesion.loss() * share(held, phase) > 0);
    }

    private String division(Lesion lesion) {
        return anatomy.structure(lesion.site().structure()).division();
    }

    /** What still passes a pathway, 0..1. */
    public double conduction(Pathway pathway) {
        return pathway.conduction(kept(Phase.LOSS));
    }

    /** What a pathway lacks, 0..1, counting each lesion only as far as it shows in this phase. */
    public double lost(Pathway pathway, Phase phase) {
        return 1 - pathway.conduction(kept(phase));
    }

    /** A quantity in its own unit: normal, the person's own variation, and what the ailments add, within its limits. */
    public double quantity(String id) {
        asked.accept(id);
        Double known = amounts.get(id);
        if (known == null) {
            Quantity quantity = physiology.quantity(id);
            known = Math.max(quantity.least(), Math.min(quantity.most(), unbounded(id)));
            amounts.put(id, known);
        }
        return known;
    }

    /** A quantity as {@link #quantity}, before its limits are minded. */
    public double unbounded(String id) {
        Quantity quantity = physiology.quantity(id);
        double amount = quantity.normal() + physiology.build(person.build(), id);
        if (quantity.spread() != 0) {
            amount += quantity.spread() * person.variation().of(quantity.trait(), quantity.side());
        }
        for (Ailment ailment : ailments) {
            amount += ailment.shifts().getOrDefault(id, 0.0);
        }
        return amount;
    }
}
