package org.manubrium.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as CSV (RFC 4180): a header, commas, CR LF, quotes where they are needed. Numbers stand bare, with a dot. A text
 * that a spreadsheet would take for a formula gets an apostrophe in front.
 */
public final class Csv {
    private static final String STARTS_FORMULA = "=+-@\t\r\n＝＋－＠";
    private static final String NEEDS_QUOTES = ",\"\r\n";

    private final StringBuilder written = new StringBuilder();
    private final int columns;

    public Csv(String... header) {
        columns = header.length;
        write(List.of(header));
    }

    /** One cell. */
    public record Cell(String written) {
        public static Cell of(String text) {
            return new Cell(quoted(harmless(text)));
        }

        public static Cell of(long number) {
            return new Cell(Long.toString(number));
        }

        /** Rounded half up, without zeros at the end. */
        public static Cell of(double number, int decimals) {
            BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
            BigDecimal plain = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
            return new Cell(plain.toPlainString());
        }

        public static Cell blank() {
            return new Cell("");
        }
    }

    /** Adds a row, as wide as the header. */
    public Csv row(Cell... cells) {
        if (cells.length != columns) {
            throw new IllegalArgumentException("a row of " + cells.length + " cells under " + columns + " columns");
        }
        write(List.of(cells).stream().map(Cell::written).toList());
        return this;
    }

    /** The whole file. */
    public String text() {
        return written.toString();
    }

    private void write(List<String> cells) {
        written.append(cells.stream().collect(Collectors.joining(","))).append("\r\n");
    }

    private static String harmless(String text) {
        return !text.isEmpty() && STARTS_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String quoted(String text) {
        boolean needed = text.chars().anyMatch(c -> NEEDS_QUOTES.indexOf(c) >= 0);
        return needed ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
