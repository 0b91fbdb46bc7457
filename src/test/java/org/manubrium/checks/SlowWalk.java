package org.manubrium.checks;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Site;
import org.manubrium.patient.Ailment;

/**
 * The obvious way to say what passes a pathway: write out every route from end to end, multiply what is left at each station
 * of it, and add the routes up by their weights. Slow, and nothing is clever.
 */
final class SlowWalk {
    private final List<Ailment> ailments;

    SlowWalk(List<Ailment> ailments) {
        this.ailments = ailments;
    }

    /** One way through: its share of the whole, and its stations, each the sites that count as one. */
    private record Route(double weight, List<List<Site>> stations) {
        Route then(Route next) {
            List<List<Site>> all = new ArrayList<>(stations);
            all.addAll(next.stations);
            return new Route(weight * next.weight, all);
        }
    }

    double passed(Pathway pathway) {
        double sum = 0;
        for (Route route : routes(pathway)) {
            double left = route.weight;
            for (List<Site> station : route.stations) {
                left *= left(station);
            }
            sum += left;
        }
        return sum;
    }

    private static List<Route> routes(Pathway pathway) {
        if (pathway instanceof Pathway.At at) {
            return List.of(new Route(1, List.of(List.of(at.site()))));
        }
        if (pathway instanceof Pathway.Stretch stretch) {
            return List.of(new Route(1, List.of(stretch.sitesPassed())));
        }
        List<Route> found = new ArrayList<>();
        if (pathway instanceof Pathway.Parallel parallel) {
            for (Pathway.Branch branch : parallel.branches()) {
                routes(branch.path()).forEach(r -> found.add(new Route(branch.weight() * r.weight, r.stations)));
            }
            return found;
        }
        found.add(new Route(1, List.of()));
        for (Pathway part : ((Pathway.Series) pathway).parts()) {
            List<Route> longer = new ArrayList<>();
            found.forEach(head -> routes(part).forEach(tail -> longer.add(head.then(tail))));
            found.clear();
            found.addAll(longer);
        }
        return found;
    }

    /** Losses of a single site multiply; along a stretch an ailment takes as much as it does at its worst. */
    private double left(List<Site> station) {
        double left = 1;
        for (Ailment ailment : ailments) {
            if (station.size() == 1) {
                for (Lesion lesion : ailment.lesions()) {
                    left *= lesion.site().covers(station.get(0)) ? 1 - lesion.loss() : 1;
                }
            } else {
                double worst = 0;
                for (Lesion lesion : ailment.lesions()) {
                    boolean there = station.stream().anyMatch(lesion.site()::covers);
                    worst = there ? Math.max(worst, lesion.loss()) : worst;
                }
                left *= 1 - worst;
            }
        }
        return left;
    }
}
