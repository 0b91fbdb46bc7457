package org.manubrium.tables;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One row of a table, read column by column; every error names the file, the line and the column. */
final class Row {
    private final String file;
    private final long line;
    private final Map<String, String> cells;

    Row(String file, long line, Map<String, String> cells) {
        this.file = file;
        this.line = line;
        this.cells = cells;
    }

    String text(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw bad("has no column \"" + column + "\"; it has " + cells.keySet());
        }
        return cell.trim();
    }

    String word(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            throw bad(column + " is empty");
        }
        return text;
    }

    Optional<String> maybe(String column) {
        return Optional.of(text(column)).filter(t -> !t.isEmpty());
    }

    double number(String column) {
        try {
            return Double.parseDouble(word(column));
        } catch (NumberFormatException e) {
            throw bad(column + ": expected a number, found \"" + text(column) + "\"");
        }
    }

    double number(String column, double ifEmpty) {
        return text(column).isEmpty() ? ifEmpty : number(column);
    }

    int whole(String column) {
        double number = number(column);
        if (number != Math.rint(number)) {
            throw bad(column + ": expected a whole number, found \"" + text(column) + "\"");
        }
        return (int) number;
    }

    boolean yes(String column) {
        return switch (text(column)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw bad(column + ": expected yes or no, found \"" + text(column) + "\"");
        };
    }

    List<String> list(String column) {
        return Arrays.stream(text(column).split("\\|", -1))
                .map(String::trim)
                .filter(t -> !t.isEmpty())
                .toList();
    }

    <E extends Enum<E>> E one(String column, Class<E> type) {
        String text = word(column).toUpperCase(java.util.Locale.ROOT);
        return Arrays.stream(type.getEnumConstants())
                .filter(c -> c.name().equals(text))
                .findFirst()
                .orElseThrow(() -> bad(column + ": expected one of " + Arrays.toString(type.getEnumConstants())
                        + ", found \"" + text(column) + "\""));
    }

    BadTables bad(String text) {
        return new BadTables(List.of(new TableProblem(file, line, text)));
    }
}
