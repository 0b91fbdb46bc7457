package org.manubrium.reasoning.weigh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Place;
import org.manubrium.examination.PlaceMode;
import org.manubrium.patient.Body;
import org.manubrium.patient.Conditions;
import org.manubrium.patient.Finding;
import org.manubrium.patient.sign.Signs;
import org.manubrium.reasoning.Column;
import org.manubrium.reasoning.Possible;
import org.manubrium.reasoning.Weighing;
import org.manubrium.reasoning.weigh.Calibrating.Weighed;

/** Weighs a differential. The same differential and tables always give the same weighing. */
public final class Weigher {
    private final Signs signs;
    private final Others others;
    private final Grounds grounds;
    private final Coding coding;

    public Weigher(Signs signs, Conditions conditions, Grounds grounds) {
        this.signs = signs;
        this.others = new Others(conditions);
        this.grounds = grounds;
        this.coding = new Coding(signs);
    }

    public Grounds grounds() {
        return grounds;
    }

    public Examination examination() {
        return signs.examination();
    }

    public Weighing weigh(Differential differential) {
        List<Candidate> candidates = new ArrayList<>(differential.candidates());
        candidates.add(others.candidate(differential, grounds.other()));
        List<Body> kinds = candidates.stream().flatMap(c -> c.bodies().stream()).toList();
        List<Member> members = Member.all(candidates);
        Looking looking = new Looking(signs, differential.patient(), kinds, members);
        Kernels kernels = new Kernels(grounds.decline());
        Signature signature = new Signature(signs, differential.patient());
        List<Column> columns = new ArrayList<>();
        for (Manoeuvre manoeuvre : signs.examination().manoeuvres()) {
            for (List<Item> step : steps(manoeuvre)) {
                if (step.stream().anyMatch(looking::tells)) {
                    Outcomes outcomes = outcomes(manoeuvre, step, looking, differential.patient());
                    if (!outcomes.allAlike()) {
                        columns.add(column(manoeuvre, step, outcomes, kernels, signature));
                    }
                }
            }
        }
        Weighed weighed = new Calibrating(signs.examination(), grounds.calibrations(), columns, kernels.tables())
                .weigh(candidates, members);
        return new Weighing(
                possible(candidates),
                members.stream().map(Member::candidate).toList(),
                weighed.weights(),
                columns,
                kernels.tables(),
                List.of(),
                weighed.fits());
    }

    /** The items that one look shows. */
    private static List<List<Item>> steps(Manoeuvre manoeuvre) {
        List<Item> items = Examination.items(manoeuvre);
        if (manoeuvre.placeMode() != PlaceMode.TOGETHER) {
            return items.stream().map(List::of).toList();
        }
        return Stream.of(Side.RIGHT, Side.LEFT, Side.NONE)
                .map(side -> items.stream().filter(item -> item.side() == side).toList())
                .filter(step -> !step.isEmpty())
                .toList();
    }

    private Outcomes outcomes(Manoeuvre manoeuvre, List<Item> step, Looking looking, Body patient) {
        List<Outcomes> places = new ArrayList<>();
        for (Item item : step) {
            List<Finding> findings = new ArrayList<>(looking.findings(manoeuvre, item));
            findings.add(looking.find(patient, manoeuvre, item));
            places.add(coding.of(manoeuvre, findings));
        }
        return places.size() == 1 ? places.get(0) : Coding.together(places);
    }

    private Column column(
            Manoeuvre manoeuvre, List<Item> step, Outcomes outcomes, Kernels kernels, Signature signature) {
        Item first = step.get(0);
        Item item = step.size() == 1 ? first : new Item(first.manoeuvre(), first.side(), "");
        int[] shown = outcomes.shown();
        return new Column(
                item,
                label(manoeuvre, item),
                manoeuvre.seconds(),
                manoeuvre.positions(),
                signature.of(manoeuvre, first),
                outcomes.names(),
                shown[shown.length - 1],
                Column.packed(Arrays.copyOf(shown, shown.length - 1)),
                kernels.of(outcomes.apart(), grounds.misread(quantity(manoeuvre))));
    }

    /** What a manoeuvre grades, or what it reads if it is measured. */
    private String quantity(Manoeuvre manoeuvre) {
        return manoeuvre.scale().isBlank()
                ? manoeuvre.reads()
                : signs.examination().scale(manoeuvre.scale()).quantity();
    }

    private static String label(Manoeuvre manoeuvre, Item item) {
        Stream<String> place = manoeuvre.places().stream()
                .filter(p -> p.id().equals(item.place()))
                .map(Place::name);
        Stream<String> side = Stream.of(item.side()).filter(s -> s != Side.NONE).map(Side::word);
        return Stream.of(Stream.of(manoeuvre.name()), place, side)
                .flatMap(parts -> parts)
                .collect(Collectors.joining(", "));
    }

    private static List<Possible> possible(List<Candidate> candidates) {
        double sum = candidates.stream().mapToDouble(Candidate::weight).sum();
        return candidates.stream()
                .map(c -> new Possible(c.id(), c.name(), c.weight() / sum, c.holds()))
                .toList();
    }
}
