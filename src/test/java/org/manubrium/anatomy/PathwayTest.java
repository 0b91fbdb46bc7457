package org.manubrium.anatomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PathwayTest {
    private static final Site A = Site.of("a", Side.RIGHT);
    private static final Site B = Site.of("b", Side.RIGHT);

    @Test
    void inSeriesWhatIsKeptMultiplies() {
        Pathway path = Pathway.series(Pathway.at(A), Pathway.at(B));

        assertThat(path.conduction(kept(Map.of(A, 0.5, B, 0.2)))).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void inParallelWhatIsKeptIsWeighed() {
        Pathway path = Pathway.parallel(
                List.of(new Pathway.Branch(0.75, Pathway.at(A)), new Pathway.Branch(0.25, Pathway.at(B))));

        assertThat(path.conduction(kept(Map.of(A, 0.0, B, 1.0)))).isCloseTo(0.25, within(1e-12));
    }

    @Test
    void anEmptySeriesPassesEverything() {
        assertThat(Pathway.series(List.of()).conduction(site -> 0)).isEqualTo(1);
    }

    @Test
    void weightsThatDoNotSumToOneAreRefused() {
        assertThatThrownBy(() -> Pathway.parallel(
                        List.of(new Pathway.Branch(0.5, Pathway.at(A)), new Pathway.Branch(0.25, Pathway.at(B)))))
                .hasMessage("weights of parallel paths must sum to 1, found 0.75 in [a right] | [b right]");
    }

    @Test
    void sitesAreListedFromTheStimulusOn() {
        assertThat(Pathway.series(Pathway.at(B), Pathway.at(A), Pathway.at(B)).sites())
                .containsExactly(B, A);
    }

    /** The oracle lists every route from end to end, one after another, and adds up what each lets through. */
    @Test
    void conductionAgreesWithWalkingEveryRoute() {
        Random random = new Random(811);
        for (int i = 0; i < 500; i++) {
            Pathway path = randomPath(random, 3);
            Map<Site, Double> kept = new HashMap<>();
            path.sites().forEach(site -> kept.put(site, random.nextInt(3) == 0 ? random.nextDouble() : 1));

            double slow = routes(path).stream().mapToDouble(r -> r.passes(kept)).sum();

            assertThat(path.conduction(kept(kept))).isCloseTo(slow, within(1e-9));
        }
    }

    @Test
    void moreLossNeverPassesMore() {
        Random random = new Random(4711);
        for (int i = 0; i < 300; i++) {
            Pathway path = randomPath(random, 3);
            Map<Site, Double> kept = new HashMap<>();
            path.sites().forEach(site -> kept.put(site, random.nextDouble()));
            double before = path.conduction(kept(kept));
            List<Site> sites = List.copyOf(path.sites());
            kept.computeIfPresent(sites.get(random.nextInt(sites.size())), (site, k) -> k * random.nextDouble());

            assertThat(path.conduction(kept(kept))).isBetween(0.0, before + 1e-12);
        }
    }

    private static Pathway randomPath(Random random, int depth) {
        int kind = depth == 0 ? 0 : random.nextInt(3);
        if (kind == 0) {
            return Pathway.at(Site.at("s" + random.nextInt(6), Segment.C7, Side.LEFT));
        }
        List<Pathway> parts = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            parts.add(randomPath(random, depth - 1));
        }
        return kind == 1 ? Pathway.series(parts) : Pathway.parallel(weighed(parts, random));
    }

    private static List<Pathway.Branch> weighed(List<Pathway> parts, Random random) {
        double[] raw = random.doubles(parts.size(), 0.1, 1).toArray();
        double sum = java.util.Arrays.stream(raw).sum();
        List<Pathway.Branch> branches = new ArrayList<>();
        for (int i = 0; i < raw.length; i++) {
            branches.add(new Pathway.Branch(raw[i] / sum, parts.get(i)));
        }
        return branches;
    }

    private record Route(double weight, List<Site> sites) {
        double passes(Map<Site, Double> kept) {
            double passed = weight;
            for (Site site : sites) {
                passed *= kept.getOrDefault(site, 1.0);
            }
            return passed;
        }

        Route then(Route next) {
            List<Site> all = new ArrayList<>(sites);
            all.addAll(next.sites);
            return new Route(weight * next.weight, all);
        }
    }

    private static List<Route> routes(Pathway path) {
        if (path instanceof Pathway.At at) {
            return List.of(new Route(1, List.of(at.site())));
        }
        List<Route> found = new ArrayList<>();
        if (path instanceof Pathway.Parallel parallel) {
            for (Pathway.Branch branch : parallel.branches()) {
                routes(branch.path()).forEach(r -> found.add(new Route(branch.weight() * r.weight(), r.sites())));
            }
            return found;
        }
        found.add(new Route(1, List.of()));
        for (Pathway part : ((Pathway.Series) path).parts()) {
            List<Route> next = routes(part);
            List<Route> longer = new ArrayList<>();
            found.forEach(r -> next.forEach(n -> longer.add(r.then(n))));
            found.clear();
            found.addAll(longer);
        }
        return found;
    }

    private static Kept kept(Map<Site, Double> amounts) {
        return site -> Objects.requireNonNull(amounts.get(site));
    }
}
