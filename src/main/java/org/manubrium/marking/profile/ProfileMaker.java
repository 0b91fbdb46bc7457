package org.manubrium.marking.profile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.marking.Measured;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.reasoning.Advice;
import org.manubrium.reasoning.Belief;
import org.manubrium.reasoning.Curve;
import org.manubrium.reasoning.Curve.Done;
import org.manubrium.reasoning.Curve.Point;
import org.manubrium.reasoning.Evidence;
import org.manubrium.reasoning.plan.Plan;
import org.manubrium.reasoning.plan.Planner;
import org.manubrium.reasoning.plan.Task;
import org.manubrium.reasoning.plan.Ways;

/** Makes the profiles of attempts at one case version. What is thought follows from the key alone. */
public final class ProfileMaker {
    /** How the patient lies when the student comes in. */
    private static final String START = "lying-45";

    private final CompiledKey key;
    private final Examination examination;
    private final Ways ways;
    private final Evidence evidence;
    private final List<Done> efficient;
    private final double threshold;

    /** @param threshold how likely a diagnosis must be to be likely enough, 0..1 */
    public ProfileMaker(CompiledKey key, Examination examination, double threshold) {
        this.key = key;
        this.examination = examination;
        this.threshold = threshold;
        this.ways = new Ways(examination);
        this.evidence = new Evidence(key.weighing());
        this.efficient =
                key.weighing().columns().isEmpty() ? List.of() : new Curve(evidence, ways).efficient(START, threshold);
    }

    /** The profile of an attempt; empty where the case has nothing to be weighed. */
    public Optional<Profile> of(List<Logged> events) {
        if (key.weighing().columns().isEmpty()) {
            return Optional.empty();
        }
        Curve curve = new Curve(evidence, ways);
        List<Logged> probes = probes(events);
        List<Done> done = done(probes);
        return Optional.of(new Profile(
                handling(events, probes), curve.of(done), curve.of(efficient), threshold, idle(probes), missed(done)));
    }

    /** The same in numbers from 0 to 1; nothing is measured of someone who does nothing. */
    public Measured measured(List<Logged> events) {
        List<Logged> probes = probes(events);
        if (probes.isEmpty()) {
            return Measured.NOTHING;
        }
        Handling handling = handling(events, probes);
        double time = handling.seconds() == 0 ? 1 : (double) handling.fewestSeconds() / handling.seconds();
        double moves = (handling.fewestChanges() + 1.0) / (handling.changes() + 1.0);
        return new Measured(thoroughness(probes), share((time + moves) / 2), information(events));
    }

    /** Of the items of every examination, in the systems on which the case turns, the share that was examined. */
    private double thoroughness(List<Logged> probes) {
        Set<String> systems = key.essentials().stream()
                .flatMap(line -> examination.manoeuvre(line.item().manoeuvre()).stream())
                .map(Manoeuvre::system)
                .collect(Collectors.toSet());
        List<Item> routine = examination.manoeuvres().stream()
                .filter(m -> m.when().equals("always") && systems.contains(m.system()))
                .flatMap(m -> Examination.items(m).stream())
                .toList();
        Set<Item> done = probes.stream()
                .map(logged -> ((Event.Probed) logged.event()).item())
                .collect(Collectors.toSet());
        long examined = routine.stream()
                .filter(item -> done.contains(item) || done.contains(new Item(item.manoeuvre(), item.side(), "")))
                .count();
        return routine.isEmpty() ? 1 : (double) examined / routine.size();
    }

    private double information(List<Logged> events) {
        return of(events)
                .map(profile -> {
                    double start = profile.own().get(0).bits();
                    Point best = profile.efficient().get(profile.efficient().size() - 1);
                    double most = start - best.bits();
                    return most <= 0 ? 1 : share((start - profile.end().bits()) / most);
                })
                .orElse(0.0);
    }

    private static double share(double number) {
        return Math.max(0, Math.min(1, number));
    }

    /**
     * The step that would help most next, for its time; empty if none tells much.
     *
     * @param position how the patient lies now
     */
    public Optional<String> next(List<Logged> events, String position) {
        Belief belief = evidence.start();
        Set<Integer> taken = new HashSet<>();
        for (Done step : done(probes(events))) {
            if (taken.add(step.column())) {
                belief = belief.see(step.column());
            }
        }
        return new Advice(evidence, ways)
                .best(belief, position, taken)
                .map(best -> evidence.columns().get(best.column()).label());
    }

    private static List<Logged> probes(List<Logged> events) {
        return events.stream()
                .filter(logged -> logged.event() instanceof Event.Probed)
                .toList();
    }

    /** The steps that could show their sign, in order. */
    private List<Done> done(List<Logged> probes) {
        List<Done> done = new ArrayList<>();
        for (Logged logged : probes) {
            Event.Probed probed = (Event.Probed) logged.event();
            OptionalInt column = evidence.column(probed.item());
            if (column.isPresent() && couldShow(probed, logged.position())) {
                done.add(new Done(column.getAsInt(), logged.bedsideSeconds() + seconds(probed.item())));
            }
        }
        return done;
    }

    private boolean couldShow(Event.Probed probed, String position) {
        return key.lines().stream()
                .filter(line -> line.item().equals(probed.item())
                        || (line.together()
                                && line.item().manoeuvre().equals(probed.item().manoeuvre())
                                && line.item().side() == probed.item().side()))
                .anyMatch(line -> line.showing().couldShow(position, probed.technique()));
    }

    private int idle(List<Logged> probes) {
        return probes.stream()
                .map(logged -> ((Event.Probed) logged.event()).item())
                .filter(item -> evidence.column(item).isEmpty())
                .mapToInt(this::seconds)
                .sum();
    }

    private List<String> missed(List<Done> done) {
        Set<Integer> taken = done.stream().map(Done::column).collect(Collectors.toSet());
        return efficient.stream()
                .map(Done::column)
                .filter(column -> !taken.contains(column))
                .map(column -> evidence.columns().get(column).label())
                .toList();
    }

    private Handling handling(List<Logged> events, List<Logged> probes) {
        int changes = 0;
        int seconds = 0;
        for (Logged logged : events) {
            if (logged.event() instanceof Event.Moved moved && !moved.position().equals(logged.position())) {
                changes++;
                seconds += examination.secondsToMove(logged.position(), moved.position());
            } else if (logged.event() instanceof Event.Probed probed) {
                seconds += seconds(probed.item());
            }
        }
        Map<Item, Task> tasks = new LinkedHashMap<>();
        probes.stream()
                .map(logged -> ((Event.Probed) logged.event()).item())
                .forEach(item -> examination
                        .manoeuvre(item.manoeuvre())
                        .ifPresent(m -> tasks.put(item, new Task(item.toString(), m.positions(), m.seconds()))));
        Plan best = new Planner(ways).best(tasks.values(), START);
        return new Handling(tasks.size(), changes, seconds, best.changes(), best.seconds());
    }

    private int seconds(Item item) {
        return examination.manoeuvre(item.manoeuvre()).map(Manoeuvre::seconds).orElse(0);
    }
}
