package org.manubrium.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.manubrium.TestSchool;
import org.manubrium.marking.Measured;
import org.manubrium.marking.event.Event;
import org.manubrium.school.mark.HandedIn;
import org.manubrium.school.mark.KeysInForce;
import org.manubrium.school.mark.Marks;
import org.manubrium.school.mark.Remarkings;
import org.manubrium.store.Database;
import org.manubrium.store.DatabaseSettings;

/**
 * Marking many attempts again, against as many bare durable updates in the same database. A first round over all of them
 * warms the machine up; the second is measured.
 */
final class RemarkBench {
    /** Fewer can be asked for with -Dattempts, on a machine that has other things to do. */
    private static final int ATTEMPTS = Integer.getInteger("attempts", 10_000);

    private static final int EVENTS = 40;

    private static final List<String> COPIES = List.of(
            "insert into account (login_name, login_folded, display_name, password_hash, created_at)"
                    + " select 'again' || x, 'again' || x, 'Person', 'hash', current_timestamp"
                    + " from system_range(1, :more)",
            "insert into attempt (account_id, case_version_id, number, is_first, started_at, handed_in_at)"
                    + " select c.id, a.case_version_id, 1, true, a.started_at, a.handed_in_at"
                    + " from account c, attempt a where c.login_name like 'again%' and a.id = 1",
            "insert into event (attempt_id, seq, client_key, type, happened_at, bedside_seconds, position, body, shown)"
                    + " select a.id, e.seq, e.client_key, e.type, e.happened_at, e.bedside_seconds, e.position, e.body,"
                    + " e.shown from attempt a, event e where a.id > 1 and e.attempt_id = 1",
            "insert into mark (attempt_id, convention, total, sheet, made_at)"
                    + " select a.id, m.convention, m.total, m.sheet, m.made_at from attempt a, mark m"
                    + " where a.id > 1 and m.attempt_id = 1");

    /** Attempts a second, bare updates a second, and what an attempt takes of the processor where others use it too. */
    record Rates(double marked, double bare, double cpuMillis) {}

    private RemarkBench() {}

    public static void main(String[] args) throws IOException {
        Rates rates = run();
        System.out.printf(
                Locale.ROOT,
                "%d attempts: marked again %.0f a second, %.2f ms of the processor each; bare durable updates %.0f%n",
                ATTEMPTS,
                rates.marked(),
                rates.cpuMillis(),
                rates.bare());
    }

    static Rates run() throws IOException {
        Path file = Files.createTempDirectory("bench").resolve("again");
        String url = "jdbc:h2:file:" + file + ";WRITE_DELAY=0";
        try (Database database = Database.open(new DatabaseSettings(url, 4))) {
            Clock clock = Clock.systemUTC();
            Marks marks = new Marks(
                    new KeysInForce(),
                    TestSchool.REFERENCE.marking().weights(),
                    TestSchool.REFERENCE.marking().conventions().ids().get(0),
                    clock,
                    (version, key, done) -> Measured.NOTHING);
            HandedIn all = new HandedIn(database, marks, 1, events());
            multiply(url);
            Remarkings remarkings = new Remarkings(database, marks, clock);
            all.correctTo(remarkings, HandedIn.otherNextStep());
            remarkings.finish(() -> true);
            all.correctTo(remarkings, HandedIn.KEY);
            long cpu = cpuNanos();
            double marked = rate(() -> remarkings.finish(() -> true));
            double each = (cpuNanos() - cpu) / 1e6 / ATTEMPTS;
            double bare = rate(() -> {
                for (int i = 0; i < ATTEMPTS; i++) {
                    database.inTransaction(stores -> {
                        stores.remarkings().finish(1, clock.instant());
                        return 1;
                    });
                }
            });
            return new Rates(marked, bare, each);
        }
    }

    /** Of the whole process: marking uses more than one thread. */
    private static long cpuNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    /** As many students as are wanted did what the first did; each statement makes all of them at once. */
    private static void multiply(String url) throws IOException {
        try (Connection connection = DriverManager.getConnection(url);
                Statement statement = connection.createStatement()) {
            for (String copy : COPIES) {
                statement.executeUpdate(copy.replace(":more", Integer.toString(ATTEMPTS - 1)));
            }
        } catch (SQLException e) {
            throw new IOException(e);
        }
    }

    private static double rate(Runnable all) {
        long start = System.nanoTime();
        all.run();
        return ATTEMPTS / ((System.nanoTime() - start) / 1e9);
    }

    private static List<Event> events() {
        List<Event> events = new ArrayList<>();
        HandedIn.KEY.essentials().forEach(line -> events.add(new Event.Probed(line.item(), Map.of())));
        HandedIn.KEY.lines().stream()
                .limit(EVENTS - events.size() - 1L)
                .forEach(line -> events.add(new Event.Answered(line.item(), "normal", List.of("normal"))));
        events.add(new Event.Answered(Event.CONCLUSION, "next", List.of("wait")));
        return events;
    }
}
