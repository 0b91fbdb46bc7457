package org.manubrium.bench;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.Trials;
import org.manubrium.casefile.CaseFile;
import org.manubrium.casefile.CaseKeys;
import org.manubrium.examination.Item;
import org.manubrium.marking.Marker;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.event.Logged;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.security.Role;
import org.manubrium.store.NewEvent;
import org.manubrium.tables.Reference;
import org.manubrium.tables.TableFiles;
import org.manubrium.tables.Tables;

/** Prints one line a figure: what, how much, and the ratio to its baseline in this run. */
public final class Bench {
    private static final int EVENTS = 80;

    private Bench() {}

    /** @param args any of model, reasoning, again, server; all of them if none is named */
    public static void main(String[] args) throws IOException {
        List<String> wanted = List.of(args);
        if (wanted.isEmpty() || wanted.contains("model")) {
            model();
        }
        if (wanted.isEmpty() || wanted.contains("reasoning")) {
            ReasoningBench.run();
        }
        if (wanted.isEmpty() || wanted.contains("again")) {
            markingAgain();
        }
        if (wanted.isEmpty() || wanted.contains("server")) {
            server();
        }
    }

    private static void markingAgain() throws IOException {
        RemarkBench.Rates rates = RemarkBench.run();
        say("bare durable update", rates.bare(), "a second");
        say("marking again, ratio " + ratio(rates.marked() / rates.bare()), rates.marked(), "a second");
        say("  of the processor for each", rates.cpuMillis(), "ms");
    }

    private static void model() throws IOException {
        Reference reference = Tables.shipped();
        say("loading all tables, warm", Load.medianMillis(10, () -> Tables.build(TableFiles.shipped())), "ms");
        CaseFile joiner = shipped("joiner", reference);
        for (CaseFile file : List.of(joiner, shipped("cook", reference))) {
            double examined = Load.medianMillis(60, () -> reference.signs().examine(file.body(reference)));
            say("a complete examination, " + file.slug(), examined, "ms");
            double compiled = Load.medianMillis(5, () -> new CaseKeys(reference).of(file));
            say("compiling a key, " + file.slug(), compiled, "ms");
        }
        CompiledKey key = new CaseKeys(reference).of(joiner);
        List<Logged> events = events(key);
        double mark = Load.medianMillis(
                300, () -> Marker.mark(key, "alder", reference.marking().weights(), events));
        say("marking an attempt of " + EVENTS + " events", mark, "ms");
    }

    private static CaseFile shipped(String name, Reference reference) throws IOException {
        String text = Files.readString(Path.of("cases", name + ".yaml"));
        return CaseFile.read(text, name, reference).caseFile().orElseThrow();
    }

    /** Essentials first, then other items in table order. */
    private static List<Logged> events(CompiledKey key) {
        List<Logged.Keyed> events = new ArrayList<>();
        for (var line : key.lines()) {
            if (events.size() < EVENTS) {
                Item item = line.item();
                events.add(new Logged.Keyed("p" + item, new Event.Probed(item, Map.of())));
                events.add(new Logged.Keyed("n" + item, new Event.Answered(item, "normal", List.of("normal"))));
            }
        }
        return Logged.inOrder(events, "lying-45");
    }

    private static void server() throws IOException {
        Path file = Files.createTempDirectory("bench").resolve("db");
        try (TestServer server = TestServer.on("jdbc:h2:file:" + file + ";WRITE_DELAY=0", "--pool-size", "10")) {
            TestBrowser educator = server.signInAs(Role.EDUCATOR, Role.STUDENT);
            String cookies = educator.cookies().stream()
                    .map(c -> c.getName() + "=" + c.getValue())
                    .collect(Collectors.joining("; "));
            String csrf = educator.csrf();
            List<String> attempts = new ArrayList<>();
            for (int i = 0; i < 16; i++) {
                attempts.add(Trials.open(educator, Trials.caseWith("root C7 left")));
            }
            URI at = server.address("/");
            double fixed = gets(at, RawClient.get("/static/css/controls.css", cookies, "*/*"));
            say("fixed file", fixed, "a second");
            for (String page : List.of("/student", "/educator", attempts.get(0))) {
                double rate = gets(at, RawClient.get(page, cookies, "text/html"));
                say("page " + page + ", ratio " + ratio(rate / fixed), rate, "a second");
            }
            double bare = inserts(server, attempts);
            say("bare durable insert", bare, "a second");
            double actions = actions(at, cookies, csrf, attempts);
            say("bedside action, ratio " + ratio(actions / bare), actions, "a second");
        }
    }

    private static double gets(URI at, byte[] request) {
        return Load.perSecond(i -> {
            RawClient client = new RawClient(at);
            return () -> client.send(request);
        });
    }

    /** The insert that every event comes to, by itself, from as many threads, in the same database. */
    private static double inserts(TestServer server, List<String> attempts) {
        AtomicLong number = new AtomicLong();
        return Load.perSecond(i -> {
            long attempt = Long.parseLong(attempts.get(i).replaceAll("\\D", ""));
            return () -> server.database()
                    .inTransaction(stores -> stores.events()
                            .append(new NewEvent(
                                    attempt,
                                    "bare" + number.incrementAndGet(),
                                    "moved",
                                    Instant.EPOCH,
                                    0,
                                    "lying-45",
                                    "{}",
                                    "")));
        });
    }

    private static double actions(URI at, String cookies, String csrf, List<String> attempts) {
        return Load.perSecond(i -> {
            RawClient client = new RawClient(at);
            String path = attempts.get(8 + i) + "/events";
            return () -> client.send(RawClient.post(
                    path,
                    cookies,
                    csrf,
                    "{\"key\":\"" + UUID.randomUUID()
                            + "\",\"type\":\"probed\",\"manoeuvre\":\"triceps-reflex\",\"side\":\"left\",\"place\":\"\","
                            + "\"technique\":{}}"));
        });
    }

    private static String ratio(double ratio) {
        return String.format(Locale.ROOT, "%.2f", ratio);
    }

    private static void say(String what, double amount, String unit) {
        System.out.printf(Locale.ROOT, "%-60s %10.2f %s%n", what, amount, unit);
    }
}
