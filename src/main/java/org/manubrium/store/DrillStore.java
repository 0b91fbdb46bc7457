package org.manubrium.store;

import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** What students were asked day by day. */
public final class DrillStore {
    private static final String QUESTION = "select id, account_id, asked_on, number, fact, question, solution,"
            + " answered_at, chosen, chosen_text, was_right from drill_question";
    private static final String FELLOWS = "(select other.account_id from enrolment own"
            + " join enrolment other on other.cohort_id = own.cohort_id where own.account_id = :account)";

    private final Handle handle;

    DrillStore(Handle handle) {
        this.handle = handle;
    }

    /** Adds it under a new id, whatever id it carries. */
    public void add(DrillQuestion made) {
        handle.createUpdate("insert into drill_question (account_id, asked_on, number, fact, question, solution)"
                        + " values (:accountId, :askedOn, :number, :fact, :question, :solution)")
                .bindMethods(made)
                .execute();
    }

    /** A student's questions of one day, in order. */
    public List<DrillQuestion> of(long account, String day) {
        return handle.createQuery(QUESTION + " where account_id = :account and asked_on = :day order by number")
                .bind("account", account)
                .bind("day", day)
                .mapTo(DrillQuestion.class)
                .list();
    }

    /** Everything a student has answered, in the order of the answers. */
    public List<DrillQuestion> answered(long account) {
        return handle.createQuery(
                        QUESTION + " where account_id = :account and answered_at is not null order by answered_at, id")
                .bind("account", account)
                .mapTo(DrillQuestion.class)
                .list();
    }

    /** Answers a question. False if it was answered before: the first answer stands. */
    public boolean answer(long id, int chosen, String text, boolean right, Instant now) {
        return handle.execute(
                        "update drill_question set answered_at = ?, chosen = ?, chosen_text = ?, was_right = ?"
                                + " where id = ? and answered_at is null",
                        now,
                        chosen,
                        text,
                        right,
                        id)
                == 1;
    }

    /** What students of the same cohorts wrongly answered about a fact, the commonest first. */
    public List<String> confusions(long account, String fact) {
        return handle.createQuery("select chosen_text from drill_question where fact = :fact and was_right = false"
                        + " and account_id in " + FELLOWS + " group by chosen_text order by count(*) desc, chosen_text")
                .bind("fact", fact)
                .bind("account", account)
                .mapTo(String.class)
                .list();
    }

    /** Answers that students of the same cohorts gave to a question about a manoeuvre in their examinations: events, JSON. */
    public List<String> answers(long account, String manoeuvre, String question, int most) {
        return handle.createQuery(
                        "select e.body from event e join attempt a on a.id = e.attempt_id"
                                + " where e.type = 'answered' and a.account_id in " + FELLOWS
                                + " and e.body like :manoeuvre and e.body like :question order by e.attempt_id desc limit :most")
                .bind("account", account)
                .bind("manoeuvre", "%\"manoeuvre\":\"" + manoeuvre + "\"%")
                .bind("question", "%\"question\":\"" + question + "\"%")
                .bind("most", most)
                .mapTo(String.class)
                .list();
    }
}
