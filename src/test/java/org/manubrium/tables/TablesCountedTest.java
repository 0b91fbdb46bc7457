package org.manubrium.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The counts that stand in DEVELOPERS.md are those of the tables. */
class TablesCountedTest {
    private static final List<String> CONFIDENCES =
            List.of("seen", "seen-secondary", "from-memory", "common-practice", "design-value");

    private static final List<Cells> CELLS = TableFiles.shipped().cells();

    @Test
    void theTableOfManoeuvresIsThatOfTheTables() throws IOException {
        assertThat(Files.readString(Path.of("DEVELOPERS.md")))
                .contains(table("manoeuvres", "system", row -> row.byColumn().getOrDefault("system", "")));
    }

    @Test
    void theTableOfConditionsIsThatOfTheTables() throws IOException {
        assertThat(Files.readString(Path.of("DEVELOPERS.md")))
                .contains(table(
                        "conditions",
                        "group",
                        row -> row.file()
                                .replaceAll(".*conditions_", "")
                                .replace(".csv", "")
                                .replace('_', ' ')));
    }

    /** Rows of one table in groups, by confidence, as Markdown. */
    private static String table(String table, String head, Function<Cells, String> group) {
        Map<String, List<Cells>> groups = CELLS.stream()
                .filter(row -> row.table().equals(table))
                .collect(Collectors.groupingBy(group, TreeMap::new, Collectors.toList()));
        Stream<String> lines = groups.entrySet().stream().map(entry -> line(entry.getKey(), entry.getValue()));
        List<Cells> all = groups.values().stream().flatMap(List::stream).toList();
        return Stream.of(
                        Stream.of(
                                "| " + head + " | " + table + " | " + String.join(" | ", CONFIDENCES) + " |",
                                "|---|" + "--:|".repeat(CONFIDENCES.size() + 1)),
                        lines,
                        Stream.of(line("all", all)))
                .flatMap(Function.identity())
                .collect(Collectors.joining("\n"));
    }

    private static String line(String name, List<Cells> rows) {
        return CONFIDENCES.stream()
                .map(confidence -> String.valueOf(rows.stream()
                        .filter(row -> confidence.equals(row.byColumn().get("confidence")))
                        .count()))
                .collect(Collectors.joining(" | ", "| " + name + " | " + rows.size() + " | ", " |"));
    }
}
