package org.manubrium.patient.sign;

import java.util.List;
import java.util.stream.IntStream;
import org.manubrium.patient.Physiology;

/** A curve through tabled points: straight between them, level beyond the first and the last. */
record Line(List<Double> at, List<Double> is) {

    /** Reads the constants {@code name.1.at}, {@code name.1.is}, {@code name.2.at} and so on, in rising order. */
    static Line read(Physiology numbers, String name, int points) {
        return new Line(column(numbers, name, points, ".at"), column(numbers, name, points, ".is"));
    }

    private static List<Double> column(Physiology numbers, String name, int points, String which) {
        return IntStream.rangeClosed(1, points)
                .mapToObj(i -> numbers.constant(name + "." + i + which))
                .toList();
    }

    double value(double x) {
        if (x <= at.get(0)) {
            return is.get(0);
        }
        for (int i = 1; i < at.size(); i++) {
            if (x <= at.get(i)) {
                double along = (x - at.get(i - 1)) / (at.get(i) - at.get(i - 1));
                return is.get(i - 1) * (1 - along) + is.get(i) * along;
            }
        }
        return is.get(is.size() - 1);
    }
}
