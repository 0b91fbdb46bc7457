package org.manubrium.reasoning;

import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;

/** Two diagnoses of two bodies each: in one, both signs agree; in the other they differ. */
final class Xor {
    private Xor() {}

    static Weighing weighing() {
        return new Weighing(
                List.of(new Possible("same", "same", 0.5, true), new Possible("other", "other", 0.5, false)),
                List.of(0, 0, 1, 1),
                List.of(0.5, 0.5, 0.5, 0.5),
                List.of(column("first", "0101"), column("second", "0110")),
                List.of(List.of(1.0, 0.0, 0.0, 1.0)),
                List.of(),
                List.of());
    }

    private static Column column(String name, String shown) {
        return new Column(
                new Item(name, Side.NONE, ""), name, 10, List.of("lying-45"), name, List.of("0", "1"), 1, shown, 0);
    }
}
