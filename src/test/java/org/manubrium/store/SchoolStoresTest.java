package org.manubrium.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.manubrium.security.Account;
import org.manubrium.security.Token;

class SchoolStoresTest {
    @EachDatabase
    void eachPublicationIsTheNextVersionAndTheOldOneStays(Database database) {
        CaseVersion first = Rows.version(database);
        CaseVersion second = database.inTransaction(stores -> stores.cases()
                .publish(new NewCaseVersion(first.caseId(), "yaml: 2", "{}", "abc", Optional.empty(), Rows.NOON)));

        assertThat(second.version()).isEqualTo(2);
        assertThat(Rows.maybe(database, stores -> stores.cases().version(first.id())))
                .contains(first);
        assertThat(Rows.maybe(database, stores -> stores.cases().latest(first.caseId())))
                .contains(second);
        List<CaseVersion> versions = database.direct(stores -> stores.cases().versions(first.caseId()));
        assertThat(versions).containsExactly(second, first);
    }

    @EachDatabase
    void caseIsMadeOnceUnderItsSlugAndTakesANewTitle(Database database) {
        CaseFile made = database.inTransaction(stores -> stores.cases().named("knee", "A knee"));
        CaseFile again = database.inTransaction(stores -> stores.cases().named("knee", "The knee"));

        assertThat(again).isEqualTo(new CaseFile(made.id(), "knee", "The knee"));
        List<CaseFile> all = database.direct(stores -> stores.cases().all());
        assertThat(all).containsExactly(again);
    }

    @EachDatabase
    void draftIsKeptChangedAndRemoved(Database database) {
        Account owner = Rows.student(database, "linnet");
        CaseDraft draft =
                database.inTransaction(stores -> stores.drafts().add(owner.id(), "A knee", "a: 1", Rows.NOON));
        CaseDraft changed = new CaseDraft(draft.id(), owner.id(), "A hip", "a: 2", Rows.NOON.plusSeconds(1));
        database.inTransaction(stores -> {
            stores.drafts().set(changed);
            return changed;
        });

        List<CaseDraft> drafts = database.direct(stores -> stores.drafts().of(owner.id()));
        assertThat(drafts).containsExactly(changed);
        database.inTransaction(stores -> {
            stores.drafts().remove(draft.id());
            return draft;
        });
        assertThat(Rows.maybe(database, stores -> stores.drafts().find(draft.id())))
                .isEmpty();
    }

    @EachDatabase
    void newCohortShowsPseudonymsAndNoLeaderboard(Database database) {
        Cohort cohort = cohort(database);

        assertThat(cohort.leaderboardOn()).isFalse();
        assertThat(cohort.pseudonyms()).isTrue();
    }

    @EachDatabase
    void cohortTakesItsSettings(Database database) {
        Cohort cohort = cohort(database);
        Cohort changed =
                new Cohort(cohort.id(), "Autumn", "other", true, false, cohort.createdBy(), cohort.createdAt());
        database.inTransaction(stores -> {
            stores.cohorts().set(changed);
            return changed;
        });

        assertThat(Rows.maybe(database, stores -> stores.cohorts().find(cohort.id())))
                .contains(changed);
    }

    @EachDatabase
    void rosterHoldsEachStudentOnceUnderDifferentPseudonyms(Database database) {
        Cohort cohort = cohort(database);
        Account yarrow = Rows.student(database, "yarrow");
        Account bryony = Rows.student(database, "bryony");
        enrol(database, cohort, yarrow, "Heron");
        enrol(database, cohort, bryony, "Plover");

        List<Enrolment> roster = database.direct(stores -> stores.cohorts().roster(cohort.id()));
        assertThat(roster).extracting(Enrolment::pseudonym).containsExactly("Plover", "Heron");
        List<Cohort> of = database.direct(stores -> stores.cohorts().of(yarrow.id()));
        assertThat(of).containsExactly(cohort);
        assertThatThrownBy(() -> enrol(database, cohort, yarrow, "Teal")).isInstanceOf(DuplicateException.class);
        Account sorrel = Rows.student(database, "sorrel");
        assertThatThrownBy(() -> enrol(database, cohort, sorrel, "Heron")).isInstanceOf(DuplicateException.class);
    }

    @EachDatabase
    void invitationWorksUntilItExpiresOrIsRevoked(Database database) {
        Cohort cohort = cohort(database);
        Invitation invitation =
                new Invitation(Token.random().hash(), cohort.id(), Rows.NOON, Rows.NOON.plus(Duration.ofDays(7)));
        database.inTransaction(stores -> {
            stores.invitations().add(invitation);
            return invitation;
        });

        assertThat(Rows.maybe(database, stores -> stores.invitations().usable(invitation.tokenHash(), Rows.NOON)))
                .contains(invitation);
        assertThat(Rows.maybe(
                        database,
                        stores -> stores.invitations().usable(invitation.tokenHash(), invitation.expiresAt())))
                .isEmpty();
        database.inTransaction(stores -> {
            stores.invitations().revoke(cohort.id());
            return cohort;
        });
        assertThat(Rows.maybe(database, stores -> stores.invitations().usable(invitation.tokenHash(), Rows.NOON)))
                .isEmpty();
    }

    @EachDatabase
    void studentSeesWhatIsSetToTheirCohorts(Database database) {
        Cohort cohort = cohort(database);
        Account yarrow = Rows.student(database, "yarrow");
        enrol(database, cohort, yarrow, "Heron");
        SetCase set = set(database, cohort);

        List<SetCase> seen = database.direct(stores -> stores.setCases().forStudent(yarrow.id()));
        assertThat(seen).containsExactly(set);
        assertThat(set.isOpen(set.opensAt())).isTrue();
        assertThat(set.isOpen(set.closesAt())).isFalse();
        Account sorrel = Rows.student(database, "sorrel");
        List<SetCase> unseen = database.direct(stores -> stores.setCases().forStudent(sorrel.id()));
        assertThat(unseen).isEmpty();
    }

    @EachDatabase
    void newMarkSupersedesTheOldOneWhichStays(Database database) {
        Attempt attempt = Rows.attempt(database);
        StoredMark first = mark(database, attempt, 40.5);
        StoredMark second = mark(database, attempt, 62.25);

        assertThat(Rows.maybe(database, stores -> stores.marks().current(attempt.id())))
                .contains(second);
        List<StoredMark> history = database.direct(stores -> stores.marks().history(attempt.id()));
        assertThat(history).extracting(StoredMark::total).containsExactly(62.25, 40.5);
        assertThat(history).extracting(StoredMark::superseded).containsExactly(false, true);
        assertThat(first.id()).isNotEqualTo(second.id());
    }

    @EachDatabase
    void marksOfASetCaseAreThoseThatCount(Database database) {
        Cohort cohort = cohort(database);
        SetCase set = set(database, cohort);
        Account yarrow = Rows.student(database, "yarrow");
        Attempt attempt = database.inTransaction(
                stores -> stores.attempts().start(yarrow.id(), Optional.of(set.id()), set.caseVersionId(), Rows.NOON));
        mark(database, attempt, 10);
        StoredMark counted = mark(database, attempt, 20);

        List<StoredMark> marks = database.direct(stores -> stores.marks().ofSetCase(set.id()));
        assertThat(marks).containsExactly(counted);
    }

    @EachDatabase
    void auditKeepsTheNewestFirst(Database database) {
        AuditEntry one = new AuditEntry(Rows.NOON, Optional.empty(), "one", "");
        AuditEntry two = new AuditEntry(
                Rows.NOON, Optional.of(Rows.student(database, "rowan").id()), "two", "x");
        database.inTransaction(stores -> {
            stores.audit().add(one);
            stores.audit().add(two);
            return two;
        });

        List<AuditEntry> latest = database.direct(stores -> stores.audit().latest(5));
        assertThat(latest).containsExactly(two, one);
    }

    private static Cohort cohort(Database database) {
        return database.inTransaction(stores -> stores.cohorts().add("Spring", "plain", Optional.empty(), Rows.NOON));
    }

    private static void enrol(Database database, Cohort cohort, Account account, String pseudonym) {
        database.inTransaction(stores -> {
            stores.cohorts().enrol(cohort.id(), account.id(), pseudonym);
            return account;
        });
    }

    private static SetCase set(Database database, Cohort cohort) {
        long version = Rows.version(database).id();
        return database.inTransaction(stores -> stores.setCases()
                .add(new SetCase(
                        0, cohort.id(), version, Rows.NOON, Rows.NOON.plusSeconds(60), SetCase.Mode.PRACTICE)));
    }

    private static StoredMark mark(Database database, Attempt attempt, double total) {
        return database.inTransaction(stores -> stores.marks().add(attempt.id(), "plain", total, "{}", Rows.NOON));
    }
}
