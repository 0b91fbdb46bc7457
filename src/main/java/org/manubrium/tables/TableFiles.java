package org.manubrium.tables;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * The table files, by table. The index names them, so that a system can bring rows of its own. The texts can be replaced
 * one by one, so that a test can ask what one row is worth.
 */
public final class TableFiles {
    private static final String ROOT = "db/tables/";

    /** The text of every file by its path below {@code db/tables}. */
    private final SortedMap<String, String> texts = new TreeMap<>();

    private final Map<String, List<String>> filesOf = new TreeMap<>();

    private TableFiles(SortedMap<String, String> texts) {
        this.texts.putAll(texts);
        for (NamedCsvRecord row : csv("index.csv")) {
            List<String> files = filesOf.computeIfAbsent(row.getField("table"), t -> new ArrayList<>());
            if (!files.contains(row.getField("file"))) {
                files.add(row.getField("file")); // a line that stands twice after a merge must not load its rows twice
            }
        }
    }

    /** The tables that are shipped with the program. */
    public static TableFiles shipped() {
        SortedMap<String, String> texts = new TreeMap<>();
        texts.put("index.csv", resource("index.csv"));
        for (NamedCsvRecord row : new TableFiles(texts).csv("index.csv")) {
            texts.put(row.getField("file"), resource(row.getField("file")));
        }
        return new TableFiles(texts);
    }

    /** The same tables with one file changed. */
    public TableFiles with(String file, UnaryOperator<String> change) {
        SortedMap<String, String> changed = new TreeMap<>(texts);
        changed.computeIfPresent(file, (name, text) -> change.apply(text));
        return new TableFiles(changed);
    }

    /** The text of each file by path. */
    public Map<String, String> texts() {
        return Map.copyOf(texts);
    }

    /** The files of a table, in the order of the index. */
    public List<String> files(String table) {
        return List.copyOf(filesOf.getOrDefault(table, List.of()));
    }

    /** Every row of a table, in the order of the index and the files; all bad rows are reported together. */
    <T> List<T> rows(String table, Function<Row, T> read) {
        List<T> found = new ArrayList<>();
        List<TableProblem> problems = new ArrayList<>();
        for (String file : files(table)) {
            for (NamedCsvRecord row : csv(file)) {
                try {
                    found.add(read.apply(new Row(ROOT + file, row.getStartingLineNumber(), row.getFieldsAsMap())));
                } catch (BadTables e) {
                    problems.addAll(e.problems());
                } catch (IllegalArgumentException e) {
                    problems.add(
                            new TableProblem(ROOT + file, row.getStartingLineNumber(), String.valueOf(e.getMessage())));
                }
            }
        }
        if (!problems.isEmpty()) {
            throw new BadTables(problems);
        }
        return List.copyOf(found);
    }

    /** Every row of every table as it is written, in the order of the index. */
    public List<Cells> cells() {
        List<Cells> found = new ArrayList<>();
        filesOf.forEach((table, files) -> files.forEach(file -> csv(file)
                .forEach(row -> found.add(new Cells(table, file, row.getStartingLineNumber(), row.getFieldsAsMap())))));
        return List.copyOf(found);
    }

    /** SHA-256 over every file's path and text. */
    public String hash() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            texts.forEach((file, text) -> {
                digest.update(file.getBytes(StandardCharsets.UTF_8));
                digest.update(text.getBytes(StandardCharsets.UTF_8));
            });
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private List<NamedCsvRecord> csv(String file) {
        String text = texts.get(file);
        if (text == null) {
            throw new IllegalArgumentException("the index names no file " + file);
        }
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(text)) {
            return reader.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String resource(String file) {
        try (InputStream in = TableFiles.class.getClassLoader().getResourceAsStream(ROOT + file)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its table " + ROOT + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
