package org.manubrium.examination;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.manubrium.anatomy.Side;

/** The vocabulary of the examination. Immutable. */
public final class Examination {
    private final Map<String, Position> positions;
    private final Map<String, Scale> scales;
    private final Map<String, Caution> cautions;
    private final Map<String, Question> questions;
    private final Map<String, Deferral> deferrals;
    private final Map<String, Manoeuvre> manoeuvres;
    private final List<Move> moves;
    private final List<PartnerExercise> partnerExercises;

    public Examination(ExaminationTables tables) {
        this.positions = by(tables.positions(), Position::id);
        this.scales = by(tables.scales(), Scale::id);
        this.cautions = by(tables.cautions(), Caution::id);
        this.questions = by(tables.questions(), Question::id);
        this.deferrals = by(tables.deferrals(), Deferral::id);
        this.manoeuvres = by(tables.manoeuvres(), Manoeuvre::id);
        this.moves = List.copyOf(tables.moves());
        this.partnerExercises = List.copyOf(tables.partnerExercises());
    }

    private static <T> Map<String, T> by(Collection<T> rows, Function<T, String> id) {
        Map<String, T> found = new LinkedHashMap<>();
        rows.forEach(row -> found.put(id.apply(row), row));
        return found;
    }

    public Collection<Manoeuvre> manoeuvres() {
        return manoeuvres.values();
    }

    public Optional<Manoeuvre> manoeuvre(String id) {
        return Optional.ofNullable(manoeuvres.get(id));
    }

    public Collection<Position> positions() {
        return positions.values();
    }

    public Optional<Position> position(String id) {
        return Optional.ofNullable(positions.get(id));
    }

    public Collection<Question> questions() {
        return questions.values();
    }

    public Optional<Question> question(String id) {
        return Optional.ofNullable(questions.get(id));
    }

    /** The reasons for which an intimate examination may be put off. */
    public Collection<Deferral> deferrals() {
        return deferrals.values();
    }

    public Optional<Deferral> deferral(String id) {
        return Optional.ofNullable(deferrals.get(id));
    }

    public Optional<Caution> caution(String id) {
        return Optional.ofNullable(cautions.get(id));
    }

    public List<PartnerExercise> partnerExercises() {
        return partnerExercises;
    }

    /** The exercise for a kind of sign that is felt. */
    public Optional<PartnerExercise> partnerExercise(String sign) {
        return partnerExercises.stream()
                .filter(exercise -> exercise.signs().contains(sign))
                .findFirst();
    }

    public Collection<Scale> scales() {
        return scales.values();
    }

    public Scale scale(String id) {
        Scale scale = scales.get(id);
        if (scale == null) {
            throw new IllegalArgumentException("no scale is called \"" + id + "\"");
        }
        return scale;
    }

    /** Whether a move between two positions is tabled. */
    public boolean canMove(String from, String to) {
        return from.equals(to) || moves.stream().anyMatch(m -> m.joins(from, to));
    }

    /** Seconds to move the patient; 0 if nothing changes. */
    public int secondsToMove(String from, String to) {
        if (from.equals(to)) {
            return 0;
        }
        return moves.stream()
                .filter(m -> m.joins(from, to))
                .mapToInt(Move::seconds)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no move leads from " + from + " to " + to));
    }

    /** Every item of a manoeuvre, right before left. */
    public static List<Item> items(Manoeuvre manoeuvre) {
        List<Item> items = new ArrayList<>();
        List<Side> sides = manoeuvre.sided() ? List.of(Side.RIGHT, Side.LEFT) : List.of(Side.NONE);
        List<String> places = manoeuvre.places().isEmpty()
                ? List.of("")
                : manoeuvre.places().stream().map(Place::id).toList();
        for (Side side : sides) {
            places.forEach(place -> items.add(new Item(manoeuvre.id(), side, place)));
        }
        return items;
    }
}
