package org.manubrium.school.bedside;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Place;
import org.manubrium.examination.Position;
import org.manubrium.examination.Variant;
import org.manubrium.marking.event.Event;

/** Whether an event can be done at all: what it names exists, and the patient lies so that it can be done. */
final class Fitness {
    private final Examination examination;

    Fitness(Examination examination) {
        this.examination = examination;
    }

    /** What is wrong with the event, as a sentence; empty if it can be done. */
    Optional<String> fault(Event event, String position) {
        if (event instanceof Event.Moved moved) {
            return examination.position(moved.position()).isPresent()
                    ? Optional.empty()
                    : Optional.of("There is no position \"" + moved.position() + "\".");
        }
        if (event instanceof Event.Asked asked) {
            return examination.question(asked.question()).isPresent()
                    ? Optional.empty()
                    : Optional.of("There is no question \"" + asked.question() + "\".");
        }
        if (event instanceof Event.Probed probed) {
            return item(probed.item()).or(() -> probe(probed, position));
        }
        if (event instanceof Event.Deferred deferred) {
            return deferred(deferred);
        }
        if (event instanceof Event.Recorded recorded) {
            return item(recorded.item());
        }
        return event instanceof Event.Answered answered ? answered(answered) : Optional.empty();
    }

    private Optional<String> deferred(Event.Deferred deferred) {
        if (examination.deferral(deferred.reason()).isEmpty()) {
            return Optional.of("There is no reason \"" + deferred.reason() + "\" to put something off.");
        }
        return manoeuvre(deferred.item())
                .map(m -> m.intimate()
                        ? Optional.<String>empty()
                        : Optional.of("The " + m.name() + " is not intimate: do it, or leave it out."))
                .orElseGet(() -> unknown(deferred.item()));
    }

    private Optional<String> answered(Event.Answered answered) {
        if (answered.item().equals(Event.CONCLUSION)) {
            return Optional.empty();
        }
        return manoeuvre(answered.item()).isPresent() ? Optional.empty() : unknown(answered.item());
    }

    private Optional<Manoeuvre> manoeuvre(Item item) {
        return examination.manoeuvre(item.manoeuvre());
    }

    private static Optional<String> unknown(Item item) {
        return Optional.of("There is no manoeuvre \"" + item.manoeuvre() + "\".");
    }

    private Optional<String> item(Item item) {
        Optional<Manoeuvre> found = manoeuvre(item);
        if (found.isEmpty()) {
            return unknown(item);
        }
        Manoeuvre manoeuvre = found.get();
        if (manoeuvre.sided() == (item.side() == Side.NONE)) {
            return Optional.of(
                    manoeuvre.sided()
                            ? "The " + manoeuvre.name() + " is done on the right or on the left: say which."
                            : "The " + manoeuvre.name() + " has no side.");
        }
        boolean known = manoeuvre.places().isEmpty()
                ? item.place().isEmpty()
                : item.place().isEmpty()
                        || manoeuvre.places().stream().map(Place::id).anyMatch(item.place()::equals);
        return known
                ? Optional.empty()
                : Optional.of("The " + manoeuvre.name() + " has no place \"" + item.place() + "\".");
    }

    private Optional<String> probe(Event.Probed probed, String position) {
        Manoeuvre manoeuvre = manoeuvre(probed.item()).orElseThrow();
        if (!manoeuvre.positions().contains(position)) {
            return Optional.of("Move the patient first: this is done "
                    + manoeuvre.positions().stream().map(this::named).collect(Collectors.joining(" or ")) + ".");
        }
        return technique(manoeuvre, probed.technique());
    }

    private String named(String position) {
        return examination.position(position).map(Position::name).orElse(position);
    }

    private static Optional<String> technique(Manoeuvre manoeuvre, Map<String, String> technique) {
        for (Map.Entry<String, String> chosen : technique.entrySet()) {
            Optional<Variant> variant = manoeuvre.variants().stream()
                    .filter(v -> v.id().equals(chosen.getKey()))
                    .findFirst();
            if (variant.isEmpty()) {
                return Optional.of("The " + manoeuvre.name() + " has no variant \"" + chosen.getKey() + "\".");
            }
            if (variant.get().choices().stream().noneMatch(c -> c.id().equals(chosen.getValue()))) {
                return Optional.of("\"" + chosen.getValue() + "\" is no choice of "
                        + variant.get().name() + ".");
            }
        }
        return Optional.empty();
    }
}
