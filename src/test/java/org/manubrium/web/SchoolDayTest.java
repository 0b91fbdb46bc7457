package org.manubrium.web;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.security.Role;

/** From a faulty case to a leaderboard, by the pages alone. */
class SchoolDayTest {
    private static final String FAULTY = """
            title: A weak elbow
            slug: weak-elbow
            patient: {age: 470, sex: female}
            conditions: [{is: root-compresion, level: C7, side: left, severity: 0.8, onset: 6 weeks}]
            """;
    private static final String MENDED = FAULTY.replace("470", "47").replace("root-compresion", "root-compression");

    @Test
    void mendedCaseIsSetHandedInByThreeAndReviewed() {
        try (TestServer server = TestServer.start()) {
            TestBrowser educator = server.signInAs(Role.EDUCATOR);
            putInUse(educator);
            String cohort = cohortWithCase(educator);
            List<String> links =
                    links(educator.post(cohort + "/roster", Map.of("names", "Ada Fenn\nBram Holt\nCleo Marsh"))
                            .body());
            handIn(server, links.get(0), "abnormal", "root C7 left");
            handIn(server, links.get(1), "abnormal", "root C7 left");
            handIn(server, links.get(2), "normal", "root C5 right");

            TestBrowser reviewer = server.signInAs(Role.REVIEWER);
            String review = cohort.replace("/educator", "/reviewer");
            List<List<String>> board = csv(reviewer.page(review + "/leaderboard.csv"));

            assertThat(board).extracting(row -> row.get(0)).containsExactly("rank", "1", "1", "3");
            String page = reviewer.page(review).body();
            assertThat(page).contains("3 of 3");
            board.subList(1, 4).forEach(row -> assertThat(page).contains(row.get(1), shown(row.get(2))));
            List<List<String>> answers = csv(reviewer.page(review + "/answers.csv"));
            assertThat(answers).anySatisfy(row -> assertThat(row).contains("conclusion/site", "root C5 right", "1"));
            String map = reviewer.page(first(reviewer.page(review).body(), "href=\"(" + review + "/cases/\\d+)\""))
                    .body();
            assertThat(map).contains("root C5 right", "3 of 3 have handed in");
            String sheet = first(map, "href=\"(" + review + "/attempts/\\d+)\"");
            assertThat(reviewer.page(sheet).body()).contains("root C7 left");
        }
    }

    private static void putInUse(TestBrowser educator) {
        String draft = at(educator.post("/educator/drafts", Map.of("text", FAULTY)));
        String faulty = educator.page(draft).body();
        assertThat(faulty).contains("2 problems", "line 3", "line 4");
        educator.post(draft, Map.of("seen", seen(faulty), "text", MENDED));
        HttpResponse<String> used = educator.post(
                draft + "/put-in-use", Map.of("seen", seen(educator.page(draft).body())));
        assertThat(used.statusCode()).isEqualTo(303);
    }

    private static String cohortWithCase(TestBrowser educator) {
        String convention = first(educator.page("/educator/cohorts").body(), "<option value=\"([^\"]+)\"");
        String cohort = at(educator.post("/educator/cohorts", Map.of("name", "Autumn", "convention", convention)));
        String version = first(educator.page(cohort).body(), "<option value=\"(\\d+)\"");
        HttpResponse<String> set = educator.post(
                cohort + "/work",
                Map.of(
                        "version",
                        version,
                        "opens",
                        "2020-01-01T09:00",
                        "closes",
                        "2099-01-01T09:00",
                        "mode",
                        "STATION"));
        assertThat(set.statusCode()).isEqualTo(303);
        return cohort;
    }

    private static void handIn(TestServer server, String link, String normal, String site) {
        TestBrowser student = server.browser();
        student.post(link, Map.of("wanted", TestServer.PASSWORD));
        String set = first(student.page("/student").body(), "name=\"set\" value=\"(\\d+)\"");
        String attempt = at(student.post("/attempts", Map.of("set", set)));
        String item = "\"manoeuvre\":\"triceps-reflex\",\"side\":\"left\",\"place\":\"\"";
        List<String> events = List.of(
                "{\"type\":\"asked\",\"question\":\"consent\"}",
                "{\"type\":\"moved\",\"position\":\"legs-over-edge\"}",
                "{\"type\":\"probed\"," + item + ",\"technique\":{}}",
                "{\"type\":\"answered\"," + item + ",\"question\":\"normal\",\"answer\":[\"" + normal + "\"]}",
                "{\"type\":\"answered\",\"manoeuvre\":\"\",\"side\":\"none\",\"question\":\"site\",\"answer\":[\""
                        + site + "\"]}",
                "{\"type\":\"handed-in\"}");
        for (int i = 0; i < events.size(); i++) {
            String keyed = events.get(i).replaceFirst("\\{", "{\"key\":\"k" + i + "\",");
            HttpResponse<String> answer = student.postJson(attempt + "/events", keyed);
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        }
    }

    private static String shown(String mean) {
        return (mean.contains(".") ? mean : mean + ".0") + " %";
    }

    private static List<String> links(String page) {
        Matcher link = Pattern.compile("(/welcome/[A-Za-z0-9_-]{43})").matcher(page);
        List<String> links = new ArrayList<>();
        while (link.find()) {
            links.add(link.group(1));
        }
        return links;
    }

    private static String seen(String page) {
        return first(page, "name=\"seen\" value=\"([^\"]+)\"");
    }

    private static String first(String page, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(page);
        assertThat(found.find()).as(pattern).isTrue();
        return found.group(1);
    }

    private static List<List<String>> csv(HttpResponse<String> file) {
        return CsvReader.builder().ofCsvRecord(file.body()).stream()
                .map(found -> List.copyOf(found.getFields()))
                .toList();
    }

    private static String at(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(303);
        return answer.headers().firstValue("Location").orElseThrow().replaceFirst("\\?.*", "");
    }
}
