package org.manubrium.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.exchange.SheetJson;
import org.manubrium.marking.DomainName;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.MarkSheet.Domain;
import org.manubrium.marking.MarkSheet.Line;
import org.manubrium.marking.key.Origin;
import org.manubrium.security.Account;
import org.manubrium.security.Role;
import org.manubrium.store.Attempt;
import org.manubrium.store.Cohort;
import org.manubrium.store.Enrolment;
import org.manubrium.store.NewCaseVersion;
import org.manubrium.store.SetCase;

class ReviewPagesTest {
    private final Instant now = Instant.now();
    private static final Duration DAY = Duration.ofDays(1);

    private final TestServer server = TestServer.start();
    private final TestBrowser reviewer = server.signInAs(Role.REVIEWER);
    private final Map<String, Account> students = new HashMap<>();
    private long version;
    private Cohort cohort = new Cohort(0, "", "", false, false, Optional.empty(), now);

    @BeforeEach
    void makeCohort() {
        cohort =
                server.database().inTransaction(stores -> stores.cohorts().add("Autumn", "any", Optional.empty(), now));
        version = server.database()
                .inTransaction(stores -> stores.cases()
                        .publish(new NewCaseVersion(
                                stores.cases().named("elbow", "A weak elbow").id(),
                                "title: A weak elbow",
                                "{}",
                                "hash",
                                Optional.empty(),
                                now)))
                .id();
        for (String name : List.of("ada", "bram", "cleo", "dara")) {
            enrol(name, "Dipper " + name);
        }
    }

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void emptyCohortSaysWhatToDoNext() {
        assertThat(reviewer.page(page()).body())
                .contains("No case has been set to this cohort yet.", "No set case counts yet.");
    }

    @Test
    void mapShowsEachFirstAttemptLineByLine() {
        SetCase set = closed();
        handIn("ada", set, 0.5, "2");
        handIn("ada", set, 1, "1");

        String body = reviewer.page(page() + "/cases/" + set.id()).body();

        assertThat(body).contains("Dipper ada", "class=\"heat-5\">50<", "1 of 4 have handed in");
        assertThat(body.split("class=\"heat-5\">50<", -1))
                .hasSize(4); // the key of the ramp, the cell and the line's mean
        assertThat(body).doesNotContain("Person ada");
    }

    @Test
    void wrongAnswersAreCountedOverFirstAttempts() {
        SetCase set = closed();
        handIn("ada", set, 0, "3");
        handIn("bram", set, 0, "3");
        handIn("cleo", set, 0, "");
        handIn("dara", set, 1, "1");

        assertThat(reviewer.page(page() + "/cases/" + set.id()).body())
                .containsPattern("2 × </span><span>3</span>")
                .containsPattern("1 × </span><span>nothing</span>");
    }

    @Test
    void attemptUnderWayAndATrialCountNowhere() {
        SetCase set = closed();
        server.database().inTransaction(stores -> {
            stores.attempts().start(student("ada"), Optional.of(set.id()), version, now);
            return stores.attempts().startTrial(student("bram"), version, now);
        });

        assertThat(reviewer.page(page() + "/cases/" + set.id()).body())
                .contains("0 of 4 have handed in", "under way", "Nobody has handed this case in yet.");
    }

    @Test
    void openCaseCountsOnlyWhenEveryoneHasHandedItIn() {
        SetCase open = set(now.plus(DAY));
        handIn("ada", open, 1, "1");
        assertThat(reviewer.page(page()).body()).contains("No set case counts yet.");

        for (String name : List.of("bram", "cleo", "dara")) {
            handIn(name, open, 0.5, "2");
        }

        assertThat(reviewer.page(page()).body()).contains("Leaderboard", "100.0 %", "the one set case");
    }

    @Test
    void leaderboardIsOffUntilTheEducatorTurnsItOnAndOnlyForItsOwnStudents() {
        SetCase set = closed();
        handIn("ada", set, 1, "1");
        String board = "/student/cohorts/" + cohort.id() + "/leaderboard";
        TestBrowser ada = server.signInAs("ada");
        TestBrowser stranger = server.signInAs(Role.STUDENT);

        assertThat(ada.page(board).statusCode()).isEqualTo(404);
        turnOn(true);
        HttpResponse<String> shown = ada.page(board);
        assertThat(shown.statusCode()).isEqualTo(200);
        assertThat(shown.body()).contains("Dipper ada", ">you<", "100.0 %").doesNotContain("Person bram");
        assertThat(stranger.page(board).statusCode()).isEqualTo(404);
    }

    @Test
    void namesAreShownOnlyWhereTheCohortSaysSo() {
        turnOn(false);

        String body = reviewer.page(page() + "/leaderboard.csv").body();

        assertThat(body).contains("Person ada").doesNotContain("Dipper");
    }

    @Test
    void csvAgreesWithThePage() {
        enrol("evil", "=HYPERLINK(\"http://x\",\"y\")");
        SetCase first = closed();
        SetCase second = closed();
        handIn("ada", first, 0.5, "=2+2");
        handIn("ada", second, 1, "1");
        handIn("bram", first, 0.25, "C6, \"C7\"");
        handIn("evil", first, 1, "1");

        List<List<String>> board = csv("leaderboard");
        String body = reviewer.page(page()).body();
        assertThat(board.get(0)).containsExactly("rank", "student", "mean", "handed_in", "counted");
        assertThat(board).hasSize(6);
        for (List<String> row : board.subList(1, 4)) {
            String mean = row.get(2).contains(".") ? row.get(2) : row.get(2) + ".0";
            assertThat(body).contains(">" + mean + " %<");
        }
        assertThat(board.get(1)).containsExactly("1", "'=HYPERLINK(\"http://x\",\"y\")", "100", "1", "2");
        assertThat(board.get(2)).containsExactly("2", "Dipper ada", "75", "2", "2");
        assertThat(board.get(4)).containsExactly("", "Dipper cleo", "", "0", "2");

        List<List<String>> lines = csv("lines");
        assertThat(lines).hasSize(1 + 4 * 2);
        assertThat(column(lines, "done")).contains("'=2+2", "C6, \"C7\"");
        assertThat(column(lines, "credit")).contains("0.5", "0.25", "1");

        List<List<String>> attempts = csv("attempts");
        assertThat(column(attempts, "total")).containsExactlyInAnyOrder("50", "100", "25", "100");
        String map = reviewer.page(page() + "/cases/" + first.id()).body();
        for (List<String> row : attempts.subList(1, attempts.size())) {
            if (row.get(0).equals(String.valueOf(first.id()))) {
                assertThat(map).contains(">" + row.get(10) + ".0 %<");
            }
        }

        List<List<String>> answers = csv("answers");
        assertThat(answers.get(0)).endsWith("done", "times");
        assertThat(column(answers, "done")).contains("'=2+2", "C6, \"C7\"");
        assertThat(column(answers, "times")).containsOnly("1");
    }

    @Test
    void csvSaysWhatItIs() {
        HttpResponse<String> file = reviewer.page(page() + "/attempts.csv");

        assertThat(file.headers().firstValue("Content-Type"))
                .hasValueSatisfying(
                        type -> assertThat(type).startsWith("text/csv").containsIgnoringCase("utf-8"));
        assertThat(file.headers().firstValue("Content-Disposition"))
                .hasValue("attachment; filename=\"cohort-" + cohort.id() + "-attempts.csv\"");
    }

    @Test
    void reviewerChangesNothing() {
        SetCase set = closed();
        String educators = "/educator/cohorts/" + cohort.id();
        for (String path : List.of(
                "/educator/cohorts",
                educators,
                educators + "/roster",
                educators + "/invitation",
                educators + "/work",
                educators + "/work/" + set.id() + "/closing",
                educators + "/work/" + set.id() + "/take-back",
                "/educator/drafts")) {
            assertThat(reviewer.post(path, Map.of("name", "x", "names", "New Person", "text", "x"))
                            .statusCode())
                    .as(path)
                    .isEqualTo(403);
        }
        List<Enrolment> roster =
                server.database().direct(stores -> stores.cohorts().roster(cohort.id()));
        assertThat(roster).hasSize(4);
    }

    @Test
    void missingCohortsAndCasesHaveNoPage() {
        assertThat(reviewer.page("/reviewer/cohorts/999").statusCode()).isEqualTo(404);
        assertThat(reviewer.page(page() + "/cases/999").statusCode()).isEqualTo(404);
        assertThat(reviewer.page("/reviewer/cohorts/999/lines.csv").statusCode())
                .isEqualTo(404);
    }

    private String page() {
        return "/reviewer/cohorts/" + cohort.id();
    }

    private void enrol(String login, String pseudonym) {
        students.put(login, server.account(login, Role.STUDENT));
        server.database().inTransaction(stores -> {
            stores.cohorts().enrol(cohort.id(), student(login), pseudonym);
            return login;
        });
    }

    private long student(String login) {
        return Optional.ofNullable(students.get(login)).orElseThrow().id();
    }

    private void turnOn(boolean pseudonyms) {
        server.database().inTransaction(stores -> {
            stores.cohorts()
                    .set(new Cohort(
                            cohort.id(), "Autumn", "any", true, pseudonyms, Optional.empty(), cohort.createdAt()));
            return cohort;
        });
    }

    private SetCase closed() {
        return set(now.minus(DAY));
    }

    private SetCase set(Instant closes) {
        return server.database()
                .inTransaction(stores -> stores.setCases()
                        .add(new SetCase(
                                0,
                                cohort.id(),
                                version,
                                now.minus(DAY.multipliedBy(9)),
                                closes,
                                SetCase.Mode.PRACTICE)));
    }

    /** A hand-in with one line at this credit, and one that everybody gets right or wrong like the first. */
    private void handIn(String login, SetCase set, double credit, String done) {
        server.database().inTransaction(stores -> {
            Attempt attempt = stores.attempts().start(student(login), Optional.of(set.id()), version, now);
            stores.attempts().handIn(attempt.id(), now);
            return stores.marks().add(attempt.id(), "any", 100 * credit, SheetJson.write(sheet(credit, done)), now);
        });
    }

    private static MarkSheet sheet(double credit, String done) {
        List<Line> reading = List.of(line("triceps-reflex/left", DomainName.READING, done, credit));
        List<Line> essential = List.of(line("triceps-reflex", DomainName.ESSENTIAL, "done", 1));
        List<Domain> domains = Stream.of(DomainName.values())
                .map(name -> new Domain(
                        name,
                        0,
                        1,
                        name == DomainName.READING ? reading : name == DomainName.ESSENTIAL ? essential : List.of()))
                .toList();
        return new MarkSheet("elbow", "any", 100 * credit, domains, List.of(), List.of());
    }

    private static Line line(String id, DomainName domain, String done, double credit) {
        return new Line(id, domain, "Triceps reflex, left", done, "1", credit, "", new Origin("some-book", "seen"));
    }

    private List<List<String>> csv(String what) {
        String text = reviewer.page(page() + "/" + what + ".csv").body();
        return CsvReader.builder().ofCsvRecord(text).stream()
                .map(found -> List.copyOf(found.getFields()))
                .toList();
    }

    private static List<String> column(List<List<String>> table, String name) {
        int at = table.get(0).indexOf(name);
        List<String> cells = new ArrayList<>();
        table.subList(1, table.size()).forEach(row -> cells.add(row.get(at)));
        return cells;
    }
}
