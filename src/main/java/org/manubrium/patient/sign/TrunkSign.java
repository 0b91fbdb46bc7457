package org.manubrium.patient.sign;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.manubrium.appearance.Appearance;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.trunk.Spot;

/**
 * One sign of the trunk. It is read off what the place stands at, and shown as the amounts that an examiner could measure
 * there; the reading is left to the examiner.
 *
 * @param drawing which drawing shows it
 * @param health which findings pass as normal
 * @param says what the patient says of how much; one of the tabled sayings
 * @param needs the ids of the quantities that explain what is found there, "@side" and "@place" to be filled in
 */
record TrunkSign(
        String drawing,
        Read read,
        Health health,
        List<Shown> shown,
        List<Said> says,
        List<Moving> moving,
        Needs needs,
        Paths paths) {

    /** An amount at a place. */
    interface Amount {
        double of(Spot spot);
    }

    /** The finding at a place. */
    interface Read {
        Finding of(Spot spot);
    }

    /** Whether a finding, whose word on the scale is {@code code}, passes as normal. */
    interface Health {
        boolean of(Spot spot, Finding finding, String code);
    }

    /** The word that is read at a place. */
    interface Word {
        String of(Spot spot);
    }

    /** The pathways on which the sign depends. */
    interface Paths {
        List<Strand> of(Spot spot);
    }

    /** The quantities that explain what is found at a place. */
    interface Needs {
        List<String> of(Spot spot);
    }

    /** One amount that is seen or felt. */
    record Shown(String label, String unit, Amount amount) {}

    /** What the patient says: which sayings, and of how much. */
    record Said(String about, Amount amount) {}

    /** A movement over time. */
    interface Moving {
        Appearance.Curve of(Spot spot);
    }

    private static TrunkSign of(String drawing, Read read, Health health) {
        return new TrunkSign(
                drawing, read, health, List.of(), List.of(), List.of(), spot -> List.of(), spot -> List.of());
    }

    /** A sign that is read as one of a set of words, of which some are usual. */
    static TrunkSign word(String drawing, Set<String> usual, Word word) {
        return of(drawing, spot -> new Finding.Seen(word.of(spot)), (spot, finding, code) -> usual.contains(code));
    }

    /** A sign that is read in the grades of its manoeuvre's scale, of which some are usual. */
    static TrunkSign grade(String drawing, String quantity, Set<String> usual, Amount amount) {
        return of(
                drawing,
                spot -> new Finding.Graded(quantity, amount.of(spot)),
                (spot, finding, code) -> usual.contains(code));
    }

    /** A sign that is measured, to a tenth; {@code least} and {@code most} are the constants between which it is usual. */
    static TrunkSign number(String drawing, String unit, Amount amount, String least, String most) {
        return of(drawing, spot -> new Finding.Measured(tenths(amount.of(spot)), unit), (spot, finding, code) -> {
            double value = ((Finding.Measured) finding).value();
            return value >= spot.constant(least) && value <= spot.constant(spot.named(most));
        });
    }

    static double tenths(double amount) {
        return Math.rint(amount * 10) / 10 + 0.0;
    }

    TrunkSign shows(String label, String unit, Amount amount) {
        return new TrunkSign(
                drawing, read, health, joined(shown, new Shown(label, unit, amount)), says, moving, needs, paths);
    }

    TrunkSign says(String about, Amount amount) {
        return new TrunkSign(drawing, read, health, shown, joined(says, new Said(about, amount)), moving, needs, paths);
    }

    TrunkSign moves(Moving curve) {
        return new TrunkSign(drawing, read, health, shown, says, joined(moving, curve), needs, paths);
    }

    /** The body draws away and the face is drawn together, as much as it hurts. */
    TrunkSign flinches(Amount pain) {
        return moves(spot -> Flinch.away(spot.body().physiology(), pain.of(spot)))
                .shows(Flinch.FACE, "%", spot -> Flinch.face(spot.body().physiology(), pain.of(spot)));
    }

    TrunkSign needs(String... ids) {
        return new TrunkSign(drawing, read, health, shown, says, moving, spot -> List.of(ids), paths);
    }

    /** What explains it depends on what is found. */
    TrunkSign explained(Needs byFinding) {
        return new TrunkSign(drawing, read, health, shown, says, moving, byFinding, paths);
    }

    TrunkSign along(Paths ways) {
        return new TrunkSign(drawing, read, health, shown, says, moving, needs, ways);
    }

    private static <T> List<T> joined(List<T> list, T one) {
        return Stream.concat(list.stream(), Stream.of(one)).toList();
    }

    Appearance show(Spot spot) {
        return new Appearance(
                drawing,
                moving.stream().map(m -> m.of(spot)).toList(),
                shown.stream()
                        .map(s -> new Appearance.Measure(
                                s.label(), tenths(s.amount().of(spot)), s.unit()))
                        .toList(),
                String.join(
                        " ", says.stream().map(s -> said(spot.body(), s, spot)).toList()));
    }

    private static String said(Body body, Said said, Spot spot) {
        return body.physiology().saying(said.about(), said.amount().of(spot));
    }
}
