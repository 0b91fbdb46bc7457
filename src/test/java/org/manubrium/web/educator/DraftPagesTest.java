package org.manubrium.web.educator;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.school.demo.ShippedCases;
import org.manubrium.security.Role;
import org.manubrium.store.Attempt;
import org.manubrium.store.CaseFile;
import org.manubrium.store.CaseVersion;

class DraftPagesTest {
    private static final String GOOD = """
            title: A weak elbow
            slug: weak-elbow
            patient: {age: 47, sex: female}
            conditions: [{is: root-compression, level: C7, side: left, severity: 0.8, onset: 6 weeks}]
            """;
    private static final String TWO_FAULTS = """
            title: A weak elbow
            slug: weak-elbow
            patient: {age: 470, sex: female}
            conditions: [{is: root-compresion, level: C7, side: left}]
            """;
    private static final Pattern SEEN = Pattern.compile("name=\"seen\" value=\"([^\"]+)\"");

    private final TestServer server = TestServer.start();
    private final TestBrowser educator = server.signInAs(Role.EDUCATOR);

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void uploadedCaseWithTwoFaultsShowsBothWithTheirLines() {
        String draft = at(upload(educator, TWO_FAULTS.getBytes(StandardCharsets.UTF_8)));
        String page = educator.page(draft).body();

        assertThat(page).contains("2 problems", "href=\"#line-3\"", "href=\"#line-4\"", "id=\"line-3\"");
        assertThat(page).contains("470", "root-compresion", "root-compression");
        assertThat(page).doesNotContain("Put it in use");
        assertThat(educator.page("/educator").body()).contains("A weak elbow");
    }

    @Test
    void everyShippedCaseIsOfferedOnTheDeskAndOpensAsADraftWithoutProblem() {
        String desk = educator.page("/educator").body();
        assertThat(ShippedCases.all())
                .allSatisfy(one ->
                        assertThat(desk).contains("<option value=\"" + one.name() + "\">" + one.title() + "</option>"));
        assertThat(desk).contains("<optgroup label=\"easy\">", "No case is in use yet");

        HttpResponse<String> answer = educator.post("/educator/drafts", Map.of("shipped", "joiner"));

        assertThat(answer.statusCode()).isEqualTo(303);
        String draft = answer.headers().firstValue("Location").orElseThrow();
        assertThat(educator.page(draft).body())
                .contains("A joiner with pain in his arm", "No problem found", "Put it in use");
        assertThat(educator.post("/educator/drafts", Map.of("shipped", "../joiner"))
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void mendedDraftGoesInUseAsAVersionWithKeyAndTablesHash() {
        String draft = begin(TWO_FAULTS);
        assertThat(educator.post(draft, Map.of("seen", seen(draft), "text", GOOD))
                        .statusCode())
                .isEqualTo(303);
        assertThat(educator.page(draft).body())
                .contains("No problem found", "version 1 of a new case", "Put it in use");

        HttpResponse<String> answer = educator.post(draft + "/put-in-use", Map.of("seen", seen(draft)));

        assertThat(answer.statusCode()).isEqualTo(303);
        CaseVersion version = versions().get(0);
        assertThat(version.version()).isEqualTo(1);
        assertThat(version.yaml()).isEqualTo(GOOD);
        assertThat(version.compiledKey()).contains("\"lines\"", "triceps-reflex");
        assertThat(version.tablesHash()).isNotBlank();
        assertThat(answer.headers().firstValue("Location"))
                .hasValueSatisfying(where ->
                        assertThat(educator.page(where).body()).contains("A weak elbow", "version 1", "It is in use."));
        assertThat(educator.page(draft).statusCode()).isEqualTo(404);
    }

    @Test
    void caseWithProblemsCannotBePutInUse() {
        String draft = begin(TWO_FAULTS);

        assertThat(educator.post(draft + "/put-in-use", Map.of("seen", seen(draft)))
                        .statusCode())
                .isEqualTo(422);
        assertThat(educator.post(draft + "/try", Map.of()).statusCode()).isEqualTo(422);
        assertThat(cases()).isEmpty();
    }

    @Test
    void versionStaysAsItIsWhenTheNextOneComes() {
        putInUse(GOOD);
        CaseVersion first = versions().get(0);
        putInUse(GOOD.replace("0.8", "0.9"));

        assertThat(versions()).hasSize(2);
        assertThat(versions().get(1)).isEqualTo(first);
        assertThat(versions().get(0).version()).isEqualTo(2);
        assertThat(educator.page("/educator/versions/" + first.id()).body()).contains("severity: 0.8");
    }

    @Test
    void sameTextIsNotPutInUseTwice() {
        putInUse(GOOD);
        String again = begin(GOOD);

        HttpResponse<String> answer = educator.post(again + "/put-in-use", Map.of("seen", seen(again)));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Version 1 in use says the same already.");
        assertThat(versions()).hasSize(1);
    }

    @Test
    void staleDraftIsRefusedWithBothTexts() {
        String draft = begin(GOOD);
        String seen = seen(draft);
        educator.post(draft, Map.of("seen", seen, "text", "title: from the other tab\n"));

        HttpResponse<String> answer = educator.post(draft, Map.of("seen", seen, "text", "title: from this tab\n"));

        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("title: from the other tab", "title: from this tab", "Nothing is lost");
        assertThat(educator.page(draft).body()).contains("from the other tab").doesNotContain("from this tab");
        assertThat(educator.post(draft, Map.of("seen", seenIn(answer.body()), "text", "title: from this tab\n"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(educator.page(draft).body()).contains("from this tab");
    }

    @Test
    void draftChangedMeanwhileIsNotPutInUse() {
        String draft = begin(GOOD);
        String seen = seen(draft);
        educator.post(draft, Map.of("seen", seen, "text", GOOD.replace("0.8", "0.3")));

        assertThat(educator.post(draft + "/put-in-use", Map.of("seen", seen)).statusCode())
                .isEqualTo(422);
        assertThat(cases()).isEmpty();
    }

    @Test
    void draftIsItsOwnersOnly() {
        String draft = begin(GOOD);
        TestBrowser other = server.signInAs(Role.EDUCATOR);

        assertThat(other.page(draft).statusCode()).isEqualTo(404);
        for (String action : List.of("", "/try", "/put-in-use", "/discard")) {
            assertThat(other.post(draft + action, Map.of("seen", seen(draft), "text", "title: mine\n"))
                            .statusCode())
                    .as(action)
                    .isEqualTo(404);
        }
        assertThat(other.page("/educator").body()).doesNotContain("A weak elbow");
        assertThat(educator.page(draft).body()).contains("A weak elbow");
    }

    @Test
    void triedDraftOpensATrialThatCountsNowhereAndIsInNoList() {
        String draft = begin(GOOD);

        HttpResponse<String> answer = educator.post(draft + "/try", Map.of());

        assertThat(answer.statusCode()).isEqualTo(303);
        long id = Long.parseLong(at(answer).replaceFirst(".*/", ""));
        Attempt attempt =
                server.database().direct(stores -> stores.attempts().find(id)).orElseThrow();
        assertThat(attempt.trial()).isTrue();
        assertThat(attempt.isFirst()).isFalse();
        assertThat(attempt.setCaseId()).isEmpty();
        assertThat(cases()).isEmpty();
        assertThat(educator.page("/educator/versions/" + attempt.caseVersionId())
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void versionInUseCanBeTriedAndRevised() {
        putInUse(GOOD);
        String version = "/educator/versions/" + versions().get(0).id();

        assertThat(at(educator.post(version + "/try", Map.of()))).startsWith("/attempts/");
        String draft = at(educator.post(version + "/revise", Map.of()));
        assertThat(educator.page(draft).body()).contains("version 2 of", "severity: 0.8");
    }

    @Test
    void emptyAndUnreadableUploadsAreRefused() {
        assertThat(upload(educator, new byte[0]).statusCode()).isEqualTo(422);
        HttpResponse<String> bytes = upload(educator, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
        assertThat(bytes.statusCode()).isEqualTo(422);
        assertThat(bytes.body()).contains("id=\"file-fault\"", "UTF-8");
    }

    @Test
    void uploadOfFiveMegabytesIsTooLarge() {
        assertThat(upload(educator, new byte[5 << 20]).statusCode()).isEqualTo(413);
    }

    @Test
    void discardedDraftIsGone() {
        String draft = begin(GOOD);
        educator.post(draft + "/discard", Map.of());

        assertThat(educator.page(draft).statusCode()).isEqualTo(404);
    }

    @Test
    void markupInACaseIsShownAsText() {
        String draft = begin("title: <b>bold</b>\n# <script>alert(1)</script>\n");

        assertThat(educator.page(draft).body()).contains("&lt;script&gt;").doesNotContain("<script>", "<b>bold");
    }

    private void putInUse(String text) {
        String draft = begin(text);
        assertThat(educator.post(draft + "/put-in-use", Map.of("seen", seen(draft)))
                        .statusCode())
                .isEqualTo(303);
    }

    private String begin(String text) {
        return at(educator.post("/educator/drafts", Map.of("text", text)));
    }

    private String seen(String draft) {
        return seenIn(educator.page(draft).body());
    }

    private static String seenIn(String page) {
        Matcher seen = SEEN.matcher(page);
        assertThat(seen.find()).isTrue();
        return seen.group(1);
    }

    private List<CaseFile> cases() {
        return server.database().direct(stores -> stores.cases().all());
    }

    private List<CaseVersion> versions() {
        return server.database()
                .direct(stores -> stores.cases().versions(cases().get(0).id()));
    }

    private static HttpResponse<String> upload(TestBrowser browser, byte[] file) {
        String edge = "a-line-between-the-parts";
        byte[] head = ("--" + edge + "\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + browser.csrf()
                        + "\r\n--" + edge
                        + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"case.yaml\"\r\n"
                        + "Content-Type: application/octet-stream\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8);
        byte[] tail = ("\r\n--" + edge + "--\r\n").getBytes(StandardCharsets.UTF_8);
        return browser.send(browser.request("/educator/drafts")
                .header("Accept", "text/html")
                .header("Content-Type", "multipart/form-data; boundary=" + edge)
                .POST(BodyPublishers.concat(
                        BodyPublishers.ofByteArray(head),
                        BodyPublishers.ofByteArray(file),
                        BodyPublishers.ofByteArray(tail))));
    }

    private static String at(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(303);
        return answer.headers().firstValue("Location").orElseThrow().replaceFirst("\\?.*", "");
    }
}
