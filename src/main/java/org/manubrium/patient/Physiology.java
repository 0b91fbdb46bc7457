package org.manubrium.patient;

import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.manubrium.anatomy.Lesion;

/** The tabled numbers of the body model, under names that are the very strings by which the code asks for them. */
public final class Physiology {
    private final Map<String, Quantity> quantities;
    private final Map<String, Constant> constants;
    /** The same by what stands before the first dot, then by what stands after it. */
    private final Map<String, Map<String, Constant>> families = new HashMap<>();

    private final Map<String, List<Course>> courses;
    private final Map<String, List<Saying>> sayings;
    private final Map<String, List<QuantityPart>> parts;

    private final Map<Build, Map<String, Double>> builds = new EnumMap<>(Build.class);

    public Physiology(
            List<Quantity> quantities,
            List<QuantityPart> parts,
            List<Constant> constants,
            List<Course> courses,
            List<Saying> sayings,
            List<BuildShift> builds) {
        this.quantities = quantities.stream().collect(Collectors.toMap(q -> q.id().intern(), Function.identity()));
        this.parts = parts.stream().collect(Collectors.groupingBy(QuantityPart::whole));
        this.constants =
                constants.stream().collect(Collectors.toMap(c -> c.name().intern(), Function.identity()));
        constants.forEach(constant -> {
            String[] name = constant.name().split("\\.", 2);
            families.computeIfAbsent(name[0], f -> new HashMap<>()).put(name[name.length - 1].intern(), constant);
        });
        this.courses = courses.stream().collect(Collectors.groupingBy(Course::division));
        builds.forEach(shift -> this.builds
                .computeIfAbsent(shift.build(), build -> new HashMap<>())
                .put(quantity(shift.quantity()).id(), shift.shift()));
        this.sayings = sayings.stream().collect(Collectors.groupingBy(Saying::about));
    }

    /** The amount of a constant by name. */
    public double constant(String name) {
        Constant constant = constants.get(name);
        if (constant == null) {
            throw new IllegalArgumentException("no constant is called \"" + name + "\"");
        }
        return constant.amount();
    }

    /** The amount of a constant by the first part of its name and the rest. */
    public double constant(String family, String rest) {
        Constant constant = families.getOrDefault(family, Map.of()).get(rest);
        return constant == null ? constant(family + "." + rest) : constant.amount();
    }

    /** By how much a build moves a quantity from its normal. */
    public double build(Build build, String id) {
        return build == Build.AVERAGE ? 0 : builds.getOrDefault(build, Map.of()).getOrDefault(id, 0.0);
    }

    public Quantity quantity(String id) {
        Quantity quantity = quantities.get(id);
        if (quantity == null) {
            throw new IllegalArgumentException("no quantity is called \"" + id + "\"");
        }
        return quantity;
    }

    public boolean hasQuantity(String id) {
        return quantities.containsKey(id);
    }

    /** The quantities that an id stands for, each with the share of an amount that reaches it: itself, or its parts. */
    public Map<String, Double> parts(String id) {
        if (hasQuantity(id)) {
            return Map.of(id, 1.0);
        }
        int dot = id.lastIndexOf('.');
        Map<String, Double> found = new TreeMap<>();
        for (QuantityPart part : parts.getOrDefault(id.substring(0, Math.max(0, dot)), List.of())) {
            found.put(quantity(part.part() + id.substring(dot)).id(), part.share());
        }
        if (found.isEmpty()) {
            throw new IllegalArgumentException("no quantity is called \"" + id + "\"");
        }
        return found;
    }

    /** Whether an id stands for a quantity or for the parts of a whole. */
    public boolean stands(String id) {
        String whole = id.substring(0, Math.max(0, id.lastIndexOf('.')));
        return hasQuantity(id)
                || (parts.containsKey(whole)
                        && parts.get(whole).stream()
                                .allMatch(part -> hasQuantity(part.part() + id.substring(whole.length()))));
    }

    /** The names of all wholes that begin so, without that beginning, hyphens as spaces. */
    List<String> wholes(String beginning) {
        return parts.keySet().stream()
                .filter(whole -> whole.startsWith(beginning))
                .map(whole -> whole.substring(beginning.length()).replace('-', ' '))
                .sorted()
                .toList();
    }

    public Collection<Quantity> quantities() {
        return quantities.values();
    }

    /** The patient's words for an amount of something, the least first in the table. */
    public String saying(String about, double amount) {
        String said = "";
        for (Saying saying : sayings.getOrDefault(about, List.of())) {
            if (amount >= saying.atLeast()) {
                said = saying.words();
            }
        }
        return said;
    }

    /** The share of a lesion that shows as shock, 0..1, given the division of the part it lies in. */
    public double shock(String division, Lesion lesion) {
        return share(division, lesion, Course::shock);
    }

    /** The share of a lesion that shows as release, 0..1. */
    public double release(String division, Lesion lesion) {
        return share(division, lesion, Course::release);
    }

    private double share(String division, Lesion lesion, ToDoubleFunction<Course> of) {
        List<Course> rows = courses.getOrDefault(division, List.of());
        if (rows.isEmpty()) {
            return 0;
        }
        double days = lesion.onset().days();
        Course before = rows.get(0);
        for (Course row : rows) {
            if (row.days() >= days) {
                double gap = row.days() - before.days();
                double along = gap == 0 ? 0 : (days - before.days()) / gap;
                return of.applyAsDouble(before) * (1 - along) + of.applyAsDouble(row) * along;
            }
            before = row;
        }
        return of.applyAsDouble(before);
    }
}
