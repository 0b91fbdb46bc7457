package org.manubrium.school.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.UnknownSite;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Reading;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.sign.Signs;

/** The findings that told the true place from the student's: what the same patient would show if the lesion lay there. */
final class Apart {
    private static final int MOST = 5;
    private static final double USUAL_LOSS = 0.8;
    private static final String USUAL_ONSET = "6 weeks";

    private final Signs signs;

    Apart(Signs signs) {
        this.signs = signs;
    }

    /** Empty if the student named no place, one that cannot be read, or one that would have shown the same. */
    List<String> findings(CompiledKey key, Body truth, String said) {
        Optional<Body> other = moved(truth, said);
        return other.map(body -> key.essentials().stream()
                        .flatMap(line -> told(line, truth, body).stream())
                        .limit(MOST)
                        .toList())
                .orElse(List.of());
    }

    /** The same patient with the lesion where the student put it, as severe and as old as it is. */
    private static Optional<Body> moved(Body truth, String said) {
        List<Lesion> own = truth.ailments().stream()
                .filter(ailment -> !ailment.old())
                .flatMap(ailment -> ailment.lesions().stream())
                .toList();
        double loss = own.stream().mapToDouble(Lesion::loss).max().orElse(USUAL_LOSS);
        Onset onset = own.stream()
                .map(Lesion::onset)
                .findFirst()
                .or(() -> Onset.parse(USUAL_ONSET))
                .orElseThrow();
        try {
            List<Ailment> ailments = new ArrayList<>(
                    truth.ailments().stream().filter(Ailment::old).toList());
            ailments.add(new Ailment(said, false, truth.anatomy().lesions(said, loss, onset), Map.of()));
            return Optional.of(truth.with(ailments));
        } catch (UnknownSite e) {
            return Optional.empty();
        }
    }

    private Optional<String> told(KeyLine line, Body truth, Body other) {
        Manoeuvre manoeuvre =
                signs.examination().manoeuvre(line.item().manoeuvre()).orElse(null);
        if (manoeuvre == null) {
            return Optional.empty();
        }
        Finding here = finding(truth, manoeuvre, line.item());
        Finding there = finding(other, manoeuvre, line.item());
        String is = written(manoeuvre, here);
        String would = written(manoeuvre, there);
        return is.equals(would)
                ? Optional.empty()
                : Optional.of(line.label() + ": " + is + " here; " + would + " if it lay where you said");
    }

    private Finding finding(Body body, Manoeuvre manoeuvre, Item item) {
        return signs.finding(body, Signs.usual(manoeuvre, item));
    }

    private String written(Manoeuvre manoeuvre, Finding finding) {
        Reading reading = signs.reading(manoeuvre, finding);
        if (reading instanceof Reading.Grade grade) {
            return grade.grade();
        }
        return reading instanceof Reading.Amount amount
                ? Math.round(amount.value()) + " " + amount.unit()
                : ((Reading.Seen) reading).seen();
    }
}
