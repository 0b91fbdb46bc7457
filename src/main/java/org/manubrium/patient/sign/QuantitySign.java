package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Finding;

/** A sign that follows from quantities of the body: what is found, what is shown of it, and what passes as normal. */
record QuantitySign(Find find, Show show, Judge judge, Carried carried) {

    interface Find {
        Finding of(Spot spot);
    }

    /** What an amount is at a spot. */
    interface Amount {
        double of(Spot spot);
    }

    /** The word that is read at a spot. */
    interface Word {
        String of(Spot spot);
    }

    interface Show {
        Appearance of(Spot spot);
    }

    interface Judge {
        boolean normal(Spot spot, Finding finding);
    }

    /** The pathways that carry it, where any does. */
    interface Carried {
        List<Strand> by(Spot spot);
    }

    private QuantitySign(Find find, Show show, Judge judge) {
        this(find, show, judge, spot -> List.of());
    }

    /** One of a set of words; normal is what the same person would show in health. */
    static QuantitySign chosen(Word word, Show show) {
        return new QuantitySign(
                spot -> new Finding.Seen(word.of(spot)),
                show,
                (spot, finding) -> finding.equals(new Finding.Seen(word.of(spot.healthy()))));
    }

    /** An amount on a scale in grades; normal is the grade that the same person would show in health. */
    static QuantitySign graded(String quantity, Amount amount, Show show) {
        return new QuantitySign(
                spot -> new Finding.Graded(quantity, amount.of(spot)),
                show,
                (spot, finding) -> grade(spot, ((Finding.Graded) finding).amount())
                        .equals(grade(spot, amount.of(spot.healthy()))));
    }

    private static String grade(Spot spot, double amount) {
        return spot.examination().scale(spot.manoeuvre().scale()).grade(amount).code();
    }

    /** A number with the unit of its manoeuvre or place, to the nearest {@code step}. */
    static QuantitySign measured(double step, Amount amount, Show show, Judge judge) {
        return new QuantitySign(
                spot -> new Finding.Measured(
                        Math.rint(Math.rint(amount.of(spot) / step) * step * 100) / 100, unit(spot)),
                show,
                judge);
    }

    QuantitySign with(Carried other) {
        return new QuantitySign(find, show, judge, other);
    }

    private static String unit(Spot spot) {
        return spot.manoeuvre().places().stream()
                .filter(place ->
                        place.id().equals(spot.place()) && !place.unit().isEmpty())
                .map(place -> place.unit())
                .findFirst()
                .orElse(spot.manoeuvre().unit());
    }

    /** At most the amount of a constant. */
    static Judge atMost(String constant) {
        return (spot, finding) -> ((Finding.Measured) finding).value() <= spot.constant(constant);
    }

    /** At least the amount of a constant. */
    static Judge atLeast(String constant) {
        return (spot, finding) -> ((Finding.Measured) finding).value() >= spot.constant(constant);
    }

    /** From the amount of one constant to that of another. */
    static Judge between(String least, String most) {
        return (spot, finding) ->
                atLeast(least).normal(spot, finding) && atMost(most).normal(spot, finding);
    }
}
