package org.manubrium.reasoning;

import java.util.ArrayList;
import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;

/** Weighings made by hand: one body for each diagnosis, signs that are there or not. */
final class Tiny {
    private final List<Possible> possible = new ArrayList<>();
    private final List<Column> columns = new ArrayList<>();
    private final double misread;

    Tiny(double misread, double... priors) {
        this.misread = misread;
        for (double prior : priors) {
            possible.add(
                    new Possible("d" + possible.size(), "diagnosis " + possible.size(), prior, possible.isEmpty()));
        }
    }

    /** A step that shows 1 in these diagnoses and 0 in the others; the patient has the first. */
    Tiny step(String sign, int seconds, int... shown) {
        return step(sign, seconds, List.of("lying-45"), shown);
    }

    Tiny step(String sign, int seconds, List<String> positions, int... shown) {
        columns.add(new Column(
                new Item("m" + columns.size(), Side.NONE, ""),
                "step " + columns.size(),
                seconds,
                positions,
                sign,
                List.of("0", "1"),
                shown[0],
                Column.packed(shown),
                0));
        return this;
    }

    Weighing weighing() {
        List<Integer> owners = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        for (int h = 0; h < possible.size(); h++) {
            owners.add(h);
            weights.add(1.0);
        }
        List<Double> kernel = List.of(1 - misread, misread, misread, 1 - misread);
        return new Weighing(possible, owners, weights, columns, List.of(kernel), List.of(), List.of());
    }

    Evidence evidence() {
        return new Evidence(weighing());
    }
}
