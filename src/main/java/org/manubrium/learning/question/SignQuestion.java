package org.manubrium.learning.question;

import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.marking.key.Origin;

/**
 * A question with its answer.
 *
 * @param fact what it asks, as "kind:what"
 * @param panels the signs that are shown, side by side
 * @param options what can be answered
 * @param right the place of the right one
 * @param why the explanation, shown after the answer
 */
public record SignQuestion(
        String fact, String asked, List<Panel> panels, List<String> options, int right, String why, Origin origin) {
    public SignQuestion {
        panels = List.copyOf(panels);
        options = List.copyOf(options);
        if (right < 0 || right >= options.size() || options.stream().distinct().count() < options.size()) {
            throw new IllegalArgumentException("one of several different options must be right: " + options);
        }
    }

    /** One manoeuvre on one patient; {@code label} tells two patients apart. */
    public record Panel(String label, String manoeuvre, List<Look> looks) {
        public Panel {
            looks = List.copyOf(looks);
        }
    }

    /** What one probe showed. */
    public record Look(Side side, String place, Map<String, String> technique, Appearance appearance) {
        public Look {
            technique = Map.copyOf(technique);
        }
    }
}
