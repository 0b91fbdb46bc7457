package org.manubrium.web.student;

import static org.assertj.core.api.Assertions.assertThat;
import static org.manubrium.Trials.caseWith;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.Trials;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.Variation;
import org.manubrium.patient.sign.Signs;
import org.manubrium.security.Role;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** Two patients who differ in their lesion but share a finding cannot be told apart by what the server sends for it. */
class SameFindingTest {
    private static final Reference REFERENCE = Tables.shipped();
    private static final List<String> LOOKED_AT_WHOLE = List.of("eyes", "face");

    private static Body body(String site) {
        Ailment ailment = new Ailment(
                site,
                false,
                REFERENCE.anatomy().lesions(site, 1, Onset.parse("6 weeks").orElseThrow()),
                Map.of());
        Person person = new Person(47, Sex.FEMALE, Variation.AVERAGE);
        return new Body(REFERENCE.anatomy(), REFERENCE.physiology(), person, List.of(ailment));
    }

    @ParameterizedTest
    @CsvSource({
        "root C7 left,root S1 left",
        "internal capsule left,optic nerve right",
        "third nerve left,median nerve right at wrist"
    })
    void sharedFindingsGiveTheSameAnswerToTheByte(String one, String other) {
        Body first = body(one);
        Body second = body(other);
        int compared = 0;
        try (TestServer server = TestServer.start()) {
            TestBrowser student = server.signInAs(Role.EDUCATOR);
            String attemptOne = Trials.open(student, caseWith(one));
            String attemptOther = Trials.open(student, caseWith(other));
            for (Manoeuvre manoeuvre : REFERENCE.examination().manoeuvres()) {
                Item item = Examination.items(manoeuvre).get(0);
                if (shared(first, second, manoeuvre) && manoeuvre.positions().contains("lying-45")) {
                    assertThat(traffic(student, attemptOne, item))
                            .as("%s", item)
                            .isEqualTo(traffic(student, attemptOther, item));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(40);
    }

    /** A look at eyes or face shows all of them beside what it asks, so that there every reading must be shared. */
    private static boolean shared(Body first, Body second, Manoeuvre manoeuvre) {
        return REFERENCE.examination().manoeuvres().stream()
                .filter(m -> m.equals(manoeuvre)
                        || (LOOKED_AT_WHOLE.contains(m.system()) && LOOKED_AT_WHOLE.contains(manoeuvre.system())))
                .flatMap(m -> Examination.items(m).stream().map(item -> Signs.usual(m, item)))
                .allMatch(probe -> REFERENCE
                        .signs()
                        .finding(first, probe)
                        .equals(REFERENCE.signs().finding(second, probe)));
    }

    /** Status, headers but for the date, and body; the sequence is the same in both attempts, as the same is done in both. */
    private static String traffic(TestBrowser student, String attempt, Item item) {
        HttpResponse<String> answer = Trials.send(
                student,
                attempt,
                "same-" + item,
                "{\"type\":\"probed\",\"manoeuvre\":\"%s\",\"side\":\"%s\",\"place\":\"%s\",\"technique\":{}}"
                        .formatted(item.manoeuvre(), item.side().word(), item.place()));
        Map<String, List<String>> headers = new TreeMap<>(answer.headers().map());
        headers.remove("date");
        return answer.statusCode() + "\n" + headers + "\n" + answer.body();
    }

    @Test
    void normalAndAbnormalDifferInNumbersAndWordsOnly() {
        Body healthy = body("root C7 left").healthy();
        for (String site : List.of("root C7 left", "spinal cord C6", "internal capsule left", "third nerve left")) {
            Body ill = body(site);
            for (Manoeuvre manoeuvre : REFERENCE.examination().manoeuvres()) {
                for (Item item : Examination.items(manoeuvre)) {
                    if (item.side() != Side.RIGHT) {
                        assertThat(shape(ill, manoeuvre, item))
                                .as("%s with %s", item, site)
                                .isEqualTo(shape(healthy, manoeuvre, item));
                    }
                }
            }
        }
    }

    private static String shape(Body body, Manoeuvre manoeuvre, Item item) {
        var shown = REFERENCE.signs().show(body, Signs.usual(manoeuvre, item));
        return shown.sign()
                + shown.curves().stream()
                        .map(c -> c.name() + c.unit() + "x" + c.samples().size())
                        .toList()
                + shown.measures().stream().map(m -> m.label() + m.unit()).toList();
    }
}
