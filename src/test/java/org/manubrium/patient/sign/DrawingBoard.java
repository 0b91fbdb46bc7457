package org.manubrium.patient.sign;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.manubrium.Chromium;
import org.manubrium.TestServer;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Place;

/** A page of the real server in a real browser on which signs are drawn as at the bedside, and read off again. */
final class DrawingBoard implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Draws the patients one after the other; the last stays on the board. */
    private static final String DRAW = """
            const [module, manoeuvre, patients, still] = arguments;
            const done = arguments[arguments.length - 1];
            const draw = ({ drawings }, probes) => {
              document.getElementById("board")?.remove();
              const board = document.createElement("div");
              board.id = "board";
              document.body.append(board);
              const said = drawings[probes.at(-1).shown.sign](board, { manoeuvre: JSON.parse(manoeuvre), probes, still });
              const shape = [...board.querySelectorAll("*")].map((e) =>
                  e.tagName.toLowerCase() + "." + (e.getAttribute("class") ?? "")).join(" ");
              return { said, shape };
            };
            import("/static/signs/" + module)
              .then((brought) => done(JSON.parse(patients).map((probes) => draw(brought, probes))))
              .catch((problem) => done("!" + problem.stack));
            """;
    /** As the page of the bedside draws, which brings the drawings of some systems when they are first wanted. */
    private static final String AT_THE_BEDSIDE = """
            const [manoeuvre, probes, fresh] = arguments;
            const done = arguments[arguments.length - 1];
            document.getElementById("board")?.remove();
            const board = document.createElement("div");
            board.id = "board";
            board.className = "sign";
            document.body.append(board);
            import("/static/signs/index.js").then(({ showSign }) => {
              const given = JSON.parse(probes);
              showSign(board, { manoeuvre: JSON.parse(manoeuvre), probes: given, fresh: fresh ? given.at(-1) : undefined });
              const said = () => board.querySelector(":scope > .heard");
              const wait = () => (said() ? done(said().textContent) : requestAnimationFrame(wait));
              wait();
            }).catch((problem) => done("!" + problem.stack));
            """;

    private static final Map<String, String> HEAD = Map.of(
            "eyes", "eye-signs.js",
            "face", "face-signs.js",
            "mouth", "mouth-signs.js",
            "ears", "ear-signs.js",
            "other cranial nerves", "nerve-signs.js");
    private static final Set<String> SURFACE = Set.of("approach", "hands", "skin", "arteries", "legs", "joints");
    private static final Map<String, String> LIMBS = Map.of(
            "power", "motion/limbs.js",
            "coordination", "motion/limbs.js",
            "tremor", "motion/limbs.js",
            "functional", "motion/limbs.js",
            "reflexes", "motion/reflexes.js",
            "cortical-feeling", "motion/feeling.js",
            "walking", "motion/walking.js",
            "standing", "motion/walking.js");

    private final TestServer server = TestServer.start();
    private final Chromium chromium = Chromium.open(1280, 900);

    DrawingBoard() {
        chromium.driver().get(server.address("/sign-in").toString());
    }

    /** A page of somebody who wants less motion, or does not mind it. */
    static DrawingBoard wantingMotion(String wish) {
        DrawingBoard board = new DrawingBoard();
        board.chromium
                .driver()
                .executeCdpCommand(
                        "Emulation.setEmulatedMedia",
                        Map.of("features", List.of(Map.of("name", "prefers-reduced-motion", "value", wish))));
        return board;
    }

    /** A page as narrow as a telephone. */
    static DrawingBoard narrow(int width) {
        DrawingBoard board = new DrawingBoard();
        Chromium.resize(board.chromium.driver(), width, 844);
        return board;
    }

    static List<Manoeuvre> manoeuvres() {
        return of(HEAD.keySet());
    }

    /** Those of limbs, standing and walking. */
    static List<Manoeuvre> limbs() {
        return of(LIMBS.keySet());
    }

    private static List<Manoeuvre> of(Set<String> systems) {
        return Bedside.REFERENCE.examination().manoeuvres().stream()
                .filter(manoeuvre -> systems.contains(manoeuvre.system()))
                .toList();
    }

    private static String module(String system) {
        return SURFACE.contains(system)
                ? "surface.js"
                : HEAD.getOrDefault(system, LIMBS.getOrDefault(system, system + ".js"));
    }

    /** Draws every side and point of a manoeuvre as stills; returns the sentence. */
    String draw(Bedside patient, String manoeuvre) {
        return draw(patient, manoeuvre, everyItem(manoeuvre), true);
    }

    /** Draws these items, one after the other; returns the sentence. */
    String draw(Bedside patient, String manoeuvre, List<String> items, boolean still) {
        return draw(List.of(patient), manoeuvre, items, still).get(0).said();
    }

    /** What is on the board when a patient is drawn: the sentence, and every element in order as its name and classes. */
    record Drawn(String said, String shape) {}

    /** Draws every side and point of a manoeuvre as stills, for one patient after the other. */
    List<Drawn> drawEach(List<Bedside> patients, String manoeuvre) {
        return draw(patients, manoeuvre, everyItem(manoeuvre), true);
    }

    private static List<String> everyItem(String manoeuvre) {
        return Examination.items(Bedside.manoeuvre(manoeuvre)).stream()
                .map(Item::toString)
                .toList();
    }

    private List<Drawn> draw(List<Bedside> patients, String manoeuvre, List<String> items, boolean still) {
        Manoeuvre drawn = Bedside.manoeuvre(manoeuvre);
        Map<String, Object> named = Map.of(
                "id", drawn.id(),
                "name", drawn.name(),
                "places", drawn.places().stream().map(DrawingBoard::place).toList());
        List<List<Map<String, Object>>> probes =
                patients.stream().map(patient -> probes(patient, items)).toList();
        Object each = run(DRAW, module(drawn.system()), json(named), json(probes), still);
        if (each instanceof String problem) {
            throw new AssertionError(manoeuvre + " " + problem);
        }
        return ((List<?>) each)
                .stream().map(one -> (Map<?, ?>) one).map(DrawingBoard::drawn).toList();
    }

    private static Drawn drawn(Map<?, ?> one) {
        return new Drawn(String.valueOf(one.get("said")), String.valueOf(one.get("shape")));
    }

    private static List<Map<String, Object>> probes(Bedside patient, List<String> items) {
        return items.stream()
                .map(text -> Map.<String, Object>of(
                        "side", Bedside.item(text).side().word(),
                        "place", Bedside.item(text).place(),
                        "technique", Map.of(),
                        "shown", patient.show(text, Map.of())))
                .toList();
    }

    /** Draws these items of a manoeuvre as the page of the bedside does; returns the sentence. */
    String show(Bedside patient, String manoeuvre, List<String> items, Map<String, String> technique) {
        List<Map<String, Object>> probes = items.stream()
                .map(text -> Map.<String, Object>of(
                        "side", Bedside.item(text).side().word(),
                        "place", Bedside.item(text).place(),
                        "technique", technique,
                        "shown", patient.show(text, technique)))
                .toList();
        Manoeuvre drawn = Bedside.manoeuvre(manoeuvre);
        return shown(
                manoeuvre, Map.of("id", drawn.id(), "name", drawn.name(), "system", drawn.system()), probes, false);
    }

    /** Draws every item of a manoeuvre as the page of the bedside does, its places with their names; returns the sentence. */
    String showAll(Bedside patient, Manoeuvre drawn) {
        return showAll(patient, drawn, false);
    }

    /** The same as it was just done, when what moves begins to move; it stays on the page when the next one is drawn. */
    void keepFresh(Bedside patient, Manoeuvre drawn) {
        showAll(patient, drawn, true);
        read("board.id = ''; board.className = 'kept'; board.dataset.of = '" + drawn.id() + "'; return true");
    }

    private String showAll(Bedside patient, Manoeuvre drawn, boolean fresh) {
        List<Map<String, Object>> probes = Examination.items(drawn).stream()
                .map(item -> Map.<String, Object>of(
                        "side", item.side().word(),
                        "place", item.place(),
                        "technique", Map.of(),
                        "shown", patient.show(item.toString(), Map.of())))
                .toList();
        List<Map<String, String>> places =
                drawn.places().stream().map(DrawingBoard::place).toList();
        return shown(
                drawn.id(),
                Map.of("id", drawn.id(), "name", drawn.name(), "system", drawn.system(), "places", places),
                probes,
                fresh);
    }

    private String shown(String manoeuvre, Map<String, Object> named, List<Map<String, Object>> probes, boolean fresh) {
        String said = String.valueOf(run(AT_THE_BEDSIDE, json(named), json(probes), fresh));
        if (said.startsWith("!")) {
            throw new AssertionError(manoeuvre + " " + said);
        }
        return said;
    }

    private static Map<String, String> place(Place place) {
        return Map.of("id", place.id(), "name", place.name());
    }

    private static String json(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Reads a number off the board by a script with {@code board} in it. */
    double number(String script) {
        return ((Number) read(script)).doubleValue();
    }

    String text(String script) {
        return String.valueOf(read(script));
    }

    Object read(String script) {
        return Objects.requireNonNull(
                chromium.driver().executeScript("const board = document.getElementById('board'); " + script), script);
    }

    Object run(String script, Object... with) {
        return Objects.requireNonNull(chromium.driver().executeAsyncScript(script, with));
    }

    @Override
    public void close() {
        chromium.close();
        server.close();
    }
}
