package org.manubrium;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import org.manubrium.school.DemoSchool;
import org.manubrium.school.account.PasswordLinks;
import org.manubrium.school.account.Sessions;
import org.manubrium.school.casedesk.CasesInUse;
import org.manubrium.school.cohort.Cohorts;
import org.manubrium.school.cohort.Rosters;
import org.manubrium.school.cohort.SetWork;
import org.manubrium.school.demo.Fennbrook;
import org.manubrium.school.demo.Rooms;
import org.manubrium.security.Passwords;
import org.manubrium.store.Database;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Tables;

/** Opens the school's rooms for the demo's seed. */
final class DemoRooms implements DemoSchool {
    @Override
    public List<Runnable> seed(Database database) {
        Reference reference = Tables.shipped();
        Clock clock = Clock.tick(Clock.systemUTC(), Duration.ofSeconds(1));
        return new Fennbrook(database, then -> open(database, reference, then), clock.instant()).fill();
    }

    private static Rooms open(Database database, Reference reference, Clock clock) {
        Sessions sessions = new Sessions(database, clock);
        MarkingWing marking = MarkingWing.of(database, reference, clock);
        StudentWing students = StudentWing.of(database, reference, marking, clock);
        return new Rooms(
                new CasesInUse(database, SchoolRooms.check(reference), clock),
                new Cohorts(
                        database, SchoolRooms.conventions(reference), marking.remarkings(), marking.worker(), clock),
                new Rosters(database, new PasswordLinks(database, new Passwords(), sessions, clock), clock),
                new SetWork(database, clock),
                students.desk(),
                students.bedside());
    }
}
