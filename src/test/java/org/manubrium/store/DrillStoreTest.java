package org.manubrium.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.manubrium.security.Account;

class DrillStoreTest {
    private static final String FACT = "roots:triceps-reflex";
    private static final String DAY = "2026-03-02";

    private static DrillQuestion ask(Database database, Account account, int number) {
        return database.inTransaction(stores -> {
            stores.drill().add(DrillQuestion.made(account.id(), DAY, number, FACT, "{\"a\":1}", "{\"b\":2}"));
            List<DrillQuestion> all = stores.drill().of(account.id(), DAY);
            return all.get(all.size() - 1);
        });
    }

    private static boolean answer(Database database, DrillQuestion asked, String text, boolean right) {
        return database.inTransaction(stores -> stores.drill().answer(asked.id(), 1, text, right, Rows.NOON));
    }

    private static void together(Database database, Account... students) {
        database.inTransaction(stores -> {
            long cohort = stores.cohorts()
                    .add("Autumn", "alder", Optional.empty(), Rows.NOON)
                    .id();
            for (Account student : students) {
                stores.cohorts().enrol(cohort, student.id(), "Dipper " + student.loginName());
            }
            return cohort;
        });
    }

    @EachDatabase
    void questionsOfADayComeBackInOrderAsTheyWereMade(Database database) {
        Account ada = Rows.student(database, "ada");
        ask(database, ada, 2);
        ask(database, ada, 1);

        assertThat(Rows.list(database, stores -> stores.drill().of(ada.id(), DAY)))
                .extracting(DrillQuestion::number)
                .containsExactly(1, 2);
        assertThat(Rows.list(database, stores -> stores.drill().of(ada.id(), DAY)))
                .allSatisfy(question ->
                        assertThat(question.question() + question.solution()).isEqualTo("{\"a\":1}{\"b\":2}"));
        assertThat(Rows.list(database, stores -> stores.drill().of(ada.id(), "2026-03-03")))
                .isEmpty();
    }

    @EachDatabase
    void theFirstAnswerStands(Database database) {
        Account ada = Rows.student(database, "ada");
        DrillQuestion asked = ask(database, ada, 1);

        assertThat(answer(database, asked, "C6", false)).isTrue();
        assertThat(answer(database, asked, "C7", true)).isFalse();
        assertThat(Rows.list(database, stores -> stores.drill().answered(ada.id())))
                .singleElement()
                .satisfies(question -> {
                    assertThat(question.chosenText()).contains("C6");
                    assertThat(question.wasRight()).contains(false);
                    assertThat(question.answeredAt()).contains(Rows.NOON);
                });
    }

    @EachDatabase
    void whatFellowStudentsTookItForComesTheCommonestFirstAndNobodyElseCounts(Database database) {
        Account ada = Rows.student(database, "ada");
        Account bram = Rows.student(database, "bram");
        Account cleo = Rows.student(database, "cleo");
        Account stranger = Rows.student(database, "dara");
        together(database, ada, bram, cleo);
        answer(database, ask(database, bram, 1), "C5 C6", false);
        answer(database, ask(database, bram, 2), "C8", false);
        answer(database, ask(database, cleo, 1), "C8", false);
        answer(database, ask(database, cleo, 2), "C7", true);
        answer(database, ask(database, stranger, 1), "L4", false);

        assertThat(Rows.list(database, stores -> stores.drill().confusions(ada.id(), FACT)))
                .containsExactly("C8", "C5 C6");
        assertThat(Rows.list(database, stores -> stores.drill().confusions(ada.id(), "roots:knee-reflex")))
                .isEmpty();
    }

    @EachDatabase
    void answersAboutAManoeuvreAreThoseOfFellowStudents(Database database) {
        Attempt attempt = Rows.attempt(database);
        Account ada = Rows.student(database, "ada");
        Account examiner = database.direct(stores -> stores.accounts().find(attempt.accountId()))
                .orElseThrow();
        String body = "{\"manoeuvre\":\"triceps-reflex\",\"question\":\"roots\",\"answer\":[\"C6\"]}";
        database.inTransaction(stores ->
                stores.events().append(new NewEvent(attempt.id(), "k", "answered", Rows.NOON, 0, "lying", body, "")));

        assertThat(Rows.list(database, stores -> stores.drill().answers(ada.id(), "triceps-reflex", "roots", 9)))
                .isEmpty();
        together(database, ada, examiner);
        assertThat(Rows.list(database, stores -> stores.drill().answers(ada.id(), "triceps-reflex", "roots", 9)))
                .containsExactly(body);
        assertThat(Rows.list(database, stores -> stores.drill().answers(ada.id(), "knee-reflex", "roots", 9)))
                .isEmpty();
    }
}
