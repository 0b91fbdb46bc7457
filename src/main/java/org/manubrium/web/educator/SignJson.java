package org.manubrium.web.educator;

import com.fasterxml.jackson.annotation.JsonRawValue;
import java.util.List;
import java.util.Map;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.exchange.AppearanceJson;
import org.manubrium.school.bedside.Choices;
import org.manubrium.school.signdesk.Look;
import org.manubrium.web.student.ChoicesJson;

/** A sign in health and now, in the form in which the drawings take what was probed at the bedside. */
final class SignJson {
    private SignJson() {}

    record Probed(
            int seq,
            String manoeuvre,
            String side,
            String place,
            Map<String, String> technique,
            @JsonRawValue String shown) {}

    static Map<String, Object> of(Manoeuvre manoeuvre, Choices choices, List<Look> health, List<Look> now) {
        return Map.of(
                "manoeuvre", ChoicesJson.manoeuvre(manoeuvre, choices), "health", probed(health), "now", probed(now));
    }

    private static List<Probed> probed(List<Look> looks) {
        return looks.stream()
                .map(look -> new Probed(
                        looks.indexOf(look) + 1,
                        look.probe().item().manoeuvre(),
                        look.probe().item().side().word(),
                        look.probe().item().place(),
                        look.probe().technique(),
                        AppearanceJson.write(look.shown())))
                .toList();
    }
}
