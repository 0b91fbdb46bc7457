package org.manubrium.patient.sign;

import java.util.List;
import java.util.Map;
import org.manubrium.patient.Physiology;

/** The class of a pressure: the highest whose systolic or diastolic limit it reaches. */
final class PressureClass {
    /** The classes of each scheme, the lowest first; their limits are tabled as "pressure.class.CODE.systolic". */
    private static final Map<String, List<String>> SCHEMES = Map.of(
            "american-2017", List.of("a-normal", "a-elevated", "a-stage-1", "a-stage-2"),
            "european-cardiology-2024", List.of("c-non-elevated", "c-elevated", "c-hypertension"),
            "european-hypertension-2023",
                    List.of("h-optimal", "h-normal", "h-high-normal", "h-grade-1", "h-grade-2", "h-grade-3"));

    private PressureClass() {}

    /** @param scheme american-2017, european-cardiology-2024 or european-hypertension-2023 */
    static String of(Physiology numbers, Circulation pressure, String scheme) {
        List<String> classes = SCHEMES.get(scheme);
        if (classes == null) {
            throw new IllegalArgumentException("no classes of the pressure are called \"" + scheme + "\"");
        }
        String reached = classes.get(0);
        for (String code : classes.subList(1, classes.size())) {
            boolean high = Math.rint(pressure.systolic()) >= numbers.constant("pressure.class." + code + ".systolic");
            boolean tense =
                    Math.rint(pressure.diastolic()) >= numbers.constant("pressure.class." + code + ".diastolic");
            reached = high || tense ? code : reached;
        }
        return reached;
    }
}
