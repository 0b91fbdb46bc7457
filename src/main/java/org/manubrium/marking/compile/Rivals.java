package org.manubrium.marking.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Place;
import org.manubrium.examination.PlaceMode;
import org.manubrium.examination.Variant;
import org.manubrium.marking.compile.Essentials.Unit;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.key.Showing;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.sign.Signs;

/** The patient beside everything the patient must be told apart from. */
final class Rivals {
    private final Signs signs;
    private final Conventions conventions;
    private final Look patient;
    private final List<Look> others = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private OptionalInt health = OptionalInt.empty();

    Rivals(Signs signs, Conventions conventions, CaseTruth truth) {
        this.signs = signs;
        this.conventions = conventions;
        this.patient = new Look(signs, truth.body());
        truth.rivals().forEach(rival -> add(rival.diagnosis().name(), rival.body()));
        List<Ailment> old =
                truth.body().ailments().stream().filter(Ailment::old).toList();
        boolean healthToo = truth.rivals().stream().anyMatch(rival -> nothingNew(rival.body()));
        if (old.size() < truth.body().ailments().size() && !healthToo) {
            add("the same person without the new illness", truth.body().with(old));
        }
    }

    private static boolean nothingNew(Body body) {
        return body.ailments().stream()
                .allMatch(a -> a.old() || (a.lesions().isEmpty() && a.shifts().isEmpty()));
    }

    private void add(String name, Body body) {
        if (nothingNew(body)) {
            health = OptionalInt.of(names.size());
        }
        names.add(name);
        others.add(new Look(signs, body));
    }

    /** The place in the list of the rival who has nothing new, if there is one. */
    OptionalInt health() {
        return health;
    }

    List<String> names() {
        return names;
    }

    Look patient() {
        return patient;
    }

    /** Everything that can be chosen as one, in table order. */
    List<Unit> units() {
        List<Unit> units = new ArrayList<>();
        for (Manoeuvre manoeuvre : signs.examination().manoeuvres()) {
            List<String> places = manoeuvre.placeMode() == PlaceMode.POINTS
                    ? manoeuvre.places().stream().map(Place::id).toList()
                    : List.of("");
            places.forEach(place -> units.add(unit(manoeuvre, place)));
        }
        return units;
    }

    private Unit unit(Manoeuvre manoeuvre, String place) {
        List<Item> items = items(manoeuvre, place);
        List<Integer> tells = IntStream.range(0, others.size())
                .filter(rival -> items.stream().anyMatch(item -> usuallyTold(manoeuvre, item, others.get(rival))))
                .boxed()
                .toList();
        boolean plain = manoeuvre.when().equals("always")
                && (place.isEmpty() || !conventions.published(place).isEmpty());
        int seconds = manoeuvre.seconds() * (manoeuvre.sided() ? 2 : 1);
        return new Unit(manoeuvre.id(), place, manoeuvre.system(), plain, seconds, tells);
    }

    static List<Item> items(Manoeuvre manoeuvre, String place) {
        return Examination.items(manoeuvre).stream()
                .filter(item -> place.isEmpty() || item.place().equals(place))
                .toList();
    }

    private boolean usuallyTold(Manoeuvre manoeuvre, Item item, Look other) {
        return Look.differ(signs, manoeuvre, patient.usual(manoeuvre, item), other.usual(manoeuvre, item));
    }

    /**
     * How an essential unit must be examined. A position, or a choice of technique, is blind when none of the rivals that
     * the unit usually tells apart can be told there; each is tried with everything else as usual.
     */
    Showing showing(Manoeuvre manoeuvre, Unit unit) {
        String usual = manoeuvre.positions().get(0);
        List<String> positions = manoeuvre.positions().stream()
                .filter(position -> unit.tells().isEmpty() || tells(manoeuvre, unit, position, Map.of()))
                .toList();
        List<String> blind = new ArrayList<>();
        for (Variant variant : manoeuvre.variants()) {
            for (Variant.Choice choice : variant.choices()) {
                if (!unit.tells().isEmpty() && !tells(manoeuvre, unit, usual, Map.of(variant.id(), choice.id()))) {
                    blind.add(variant.id() + "=" + choice.id());
                }
            }
        }
        return new Showing(positions, blind, lowestNeeds(manoeuvre));
    }

    private boolean tells(Manoeuvre manoeuvre, Unit unit, String position, Map<String, String> technique) {
        return items(manoeuvre, unit.place()).stream()
                .anyMatch(item -> unit.tells().stream()
                        .anyMatch(rival -> Look.differ(
                                signs,
                                manoeuvre,
                                patient.with(item, position, technique),
                                others.get(rival).with(item, position, technique))));
    }

    /** Where a manoeuvre can be reinforced, its lowest level may be recorded only after that was tried. */
    static List<String> lowestNeeds(Manoeuvre manoeuvre) {
        return Reinforcement.choices(manoeuvre).stream()
                .map(choice -> Reinforcement.VARIANT + "=" + choice)
                .toList();
    }
}
