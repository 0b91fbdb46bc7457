package org.manubrium.anatomy;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The way from a stimulus to its effect. In series what is kept multiplies; in parallel it is weighed, so that one lost
 * root weakens and rarely abolishes.
 */
public sealed interface Pathway {

    /** The share that still passes, 0..1, given what passes each site and each stretch of tract. */
    double conduction(Kept kept);

    private static Set<String> structures(Stream<Pathway> parts) {
        return parts.flatMap(part -> part.structures().stream()).collect(Collectors.toUnmodifiableSet());
    }

    /** Visits every site, from the stimulus on. */
    void visit(Consumer<Site> visitor);

    /** The names of all structures on the way. */
    Set<String> structures();

    /** Where it runs. */
    Footprint footprint();

    private static Footprint footprint(Stream<Pathway> parts) {
        return parts.map(Pathway::footprint).reduce(Footprint.NOWHERE, Footprint::and);
    }

    /** Whether a lesion said to lie here lies on the way. */
    boolean passes(Site lesion);

    default Set<Site> sites() {
        Set<Site> found = new LinkedHashSet<>();
        visit(found::add);
        return found;
    }

    static Pathway at(Site site) {
        return new At(site);
    }

    static Pathway series(List<Pathway> parts) {
        return parts.size() == 1 ? parts.get(0) : new Series(parts);
    }

    static Pathway series(Pathway... parts) {
        return series(List.of(parts));
    }

    /** A tract from one segment to the next; the sites share their structure and side. */
    static Pathway stretch(List<Site> sites) {
        return sites.size() == 1 ? at(sites.get(0)) : new Stretch(sites);
    }

    static Pathway parallel(List<Branch> branches) {
        return new Parallel(branches);
    }

    /** A single site. */
    record At(Site site, Footprint footprint) implements Pathway {
        public At(Site site) {
            this(site, Footprint.of(site));
        }

        @Override
        public double conduction(Kept kept) {
            return kept.touches(footprint) ? kept.at(site) : 1;
        }

        @Override
        public boolean passes(Site lesion) {
            return lesion.covers(site);
        }

        @Override
        public Set<String> structures() {
            return Set.of(site.structure());
        }

        @Override
        public void visit(Consumer<Site> visitor) {
            visitor.accept(site);
        }
    }

    /** A tract through several segments; an empty stretch passes everything. */
    record Stretch(List<Site> sitesPassed, Footprint footprint) implements Pathway {
        public Stretch(List<Site> sitesPassed) {
            this(
                    List.copyOf(sitesPassed),
                    sitesPassed.stream().map(Footprint::of).reduce(Footprint.NOWHERE, Footprint::and));
        }

        @Override
        public double conduction(Kept kept) {
            return kept.touches(footprint) ? kept.along(sitesPassed) : 1;
        }

        @Override
        public boolean passes(Site lesion) {
            return lesion.coversAny(sitesPassed);
        }

        @Override
        public Set<String> structures() {
            return sitesPassed.isEmpty() ? Set.of() : Set.of(sitesPassed.get(0).structure());
        }

        @Override
        public void visit(Consumer<Site> visitor) {
            sitesPassed.forEach(visitor);
        }
    }

    /** One after the other; an empty series passes everything. */
    record Series(List<Pathway> parts, Set<String> structures, Footprint footprint) implements Pathway {
        public Series(List<Pathway> parts) {
            this(List.copyOf(parts), Pathway.structures(parts.stream()), Pathway.footprint(parts.stream()));
        }

        @Override
        public double conduction(Kept kept) {
            if (!kept.touches(footprint)) {
                return 1;
            }
            double passed = 1;
            for (Pathway part : parts) {
                passed *= part.conduction(kept);
            }
            return passed;
        }

        @Override
        public boolean passes(Site lesion) {
            return structures.contains(lesion.structure()) && parts.stream().anyMatch(part -> part.passes(lesion));
        }

        @Override
        public void visit(Consumer<Site> visitor) {
            parts.forEach(part -> part.visit(visitor));
        }

        /** Where it runs tells pathways apart well enough, without a walk of them. */
        @Override
        public int hashCode() {
            return footprint.hashCode();
        }
    }

    /** Side by side; the weights sum to 1. */
    record Parallel(List<Branch> branches, Set<String> structures, Footprint footprint) implements Pathway {
        /** Tabled weights add up to 1 but for the last digit; what loses nothing passes everything. */
        private static final double ROUNDING = 1e-12;

        public Parallel(List<Branch> branches) {
            this(
                    List.copyOf(branches),
                    Pathway.structures(branches.stream().map(Branch::path)),
                    Pathway.footprint(branches.stream().map(Branch::path)));
        }

        public Parallel {
            double sum = branches.stream().mapToDouble(Branch::weight).sum();
            if (Math.abs(sum - 1) > 1e-6) {
                throw new IllegalArgumentException("weights of parallel paths must sum to 1, found " + sum + " in "
                        + branches.stream()
                                .map(b -> b.path().sites().toString())
                                .collect(Collectors.joining(" | ")));
            }
        }

        @Override
        public double conduction(Kept kept) {
            if (!kept.touches(footprint)) {
                return 1;
            }
            double passed = 0;
            for (Branch branch : branches) {
                passed += branch.weight() * branch.path().conduction(kept);
            }
            return passed > 1 - ROUNDING ? 1 : passed;
        }

        @Override
        public boolean passes(Site lesion) {
            return structures.contains(lesion.structure())
                    && branches.stream().anyMatch(branch -> branch.path().passes(lesion));
        }

        @Override
        public void visit(Consumer<Site> visitor) {
            branches.forEach(branch -> branch.path().visit(visitor));
        }

        /** Where it runs tells pathways apart well enough, without a walk of them. */
        @Override
        public int hashCode() {
            return footprint.hashCode();
        }
    }

    /** One of several parallel paths with its share of the whole. */
    record Branch(double weight, Pathway path) {}
}
