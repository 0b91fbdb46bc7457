package org.manubrium.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.manubrium.TestSchool;
import org.manubrium.marking.event.Event;
import org.manubrium.school.mark.HandedIn;
import org.manubrium.school.mark.KeysInForce;
import org.manubrium.school.mark.Marks;
import org.manubrium.school.mark.Remarkings;
import org.manubrium.store.Database;
import org.manubrium.store.DatabaseSettings;

/** Marking many attempts again, against as many bare durable updates in the same database. */
final class RemarkBench {
    /** Fewer can be asked for with -Dattempts, on a machine that has other things to do. */
    private static final int ATTEMPTS = Integer.getInteger("attempts", 10_000);

    private static final int EVENTS = 40;

    /** Attempts a second, and bare updates a second. */
    record Rates(double marked, double bare) {}

    private RemarkBench() {}

    static Rates run() throws IOException {
        Path file = Files.createTempDirectory("bench").resolve("again");
        try (Database database = Database.open(new DatabaseSettings("jdbc:h2:file:" + file + ";WRITE_DELAY=0", 4))) {
            Clock clock = Clock.systemUTC();
            Marks marks = new Marks(
                    new KeysInForce(),
                    TestSchool.REFERENCE.marking().weights(),
                    TestSchool.REFERENCE.marking().conventions().ids().get(0),
                    clock);
            HandedIn all = new HandedIn(database, marks, ATTEMPTS, events());
            Remarkings remarkings = new Remarkings(database, marks, clock);
            all.correctTo(remarkings, HandedIn.otherNextStep());
            double marked = rate(() -> remarkings.finish(() -> true));
            double bare = rate(() -> {
                for (int i = 0; i < ATTEMPTS; i++) {
                    database.inTransaction(stores -> {
                        stores.remarkings().finish(1, clock.instant());
                        return 1;
                    });
                }
            });
            return new Rates(marked, bare);
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
