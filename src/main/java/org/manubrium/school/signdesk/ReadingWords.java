package org.manubrium.school.signdesk;

import org.manubrium.examination.Examination;
import org.manubrium.examination.Level;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Reading;
import org.manubrium.examination.Scale;

/** A reading as a teacher would say it. */
record ReadingWords(Examination examination) {

    String of(Manoeuvre manoeuvre, Reading reading) {
        if (reading instanceof Reading.Grade grade) {
            return level(grade.scale(), grade.grade());
        }
        if (reading instanceof Reading.Amount amount) {
            return (plain(amount.value()) + " " + amount.unit()).strip();
        }
        String seen = ((Reading.Seen) reading).seen();
        return manoeuvre.scale().isEmpty() ? seen : level(manoeuvre.scale(), seen);
    }

    private String level(String scaleId, String code) {
        Scale scale = examination.scale(scaleId);
        int rank = scale.rank(code);
        if (rank < 0) {
            return code;
        }
        Level level = scale.levels().get(rank);
        return level.label().equals(code) || !scale.ordered() ? level.label() : code + ", " + level.label();
    }

    private static String plain(double value) {
        double rounded = Math.round(value * 10) / 10.0;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }
}
