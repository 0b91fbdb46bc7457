package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;

/** Every kind of sign, drawn as the page of the bedside draws it. */
class EverySignDrawnTest {
    private static final Bedside HEALTHY = Bedside.healthy(45);

    /** One manoeuvre of each kind of sign in each system. */
    static Iterable<Manoeuvre> kinds() {
        Map<String, Manoeuvre> kinds = new LinkedHashMap<>();
        for (Manoeuvre manoeuvre : Bedside.REFERENCE.examination().manoeuvres()) {
            String first = Examination.items(manoeuvre).get(0).toString();
            String sign = HEALTHY.show(first, Map.of()).sign();
            kinds.putIfAbsent(manoeuvre.system() + "/" + sign, manoeuvre);
        }
        return kinds.values();
    }

    @Test
    void eachSaysWhatIsSeenAndWhatIsFeltHasAnExercise() {
        TreeSet<String> linked = new TreeSet<>();
        try (DrawingBoard board = new DrawingBoard()) {
            for (Manoeuvre manoeuvre : kinds()) {
                String said = board.showAll(HEALTHY, manoeuvre);
                assertThat(said).as(manoeuvre.id()).isNotBlank();
                String link = board.text("return board.querySelector('.partner a')?.getAttribute('href') ?? ''");
                if (!link.isEmpty()) {
                    linked.add(link.substring("/partner/".length()));
                }
            }
        }
        assertThat(linked)
                .contains("pulse", "limb-power", "percussion-note", "apex-beat", "liver-edge", "node", "joint-feel")
                .allSatisfy(sign -> assertThat(Bedside.REFERENCE.examination().partnerExercise(sign))
                        .as(sign)
                        .isPresent());
    }
}
