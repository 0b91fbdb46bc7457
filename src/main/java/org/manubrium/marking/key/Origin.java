package org.manubrium.marking.key;

/**
 * Where a statement of the key comes from: ids of sources separated by ";", and how well it was seen.
 *
 * @param row names the table's row, with a print of what it says, where nobody here has opened its text; else blank
 */
public record Origin(String source, String confidence, String row) {
    private static final String UNOPENED = "from-memory";

    /** One that names no row. */
    public Origin(String source, String confidence) {
        this(source, confidence, "");
    }

    /**
     * That of one row of a table.
     *
     * @param said everything the row says: when the row changes, its name does too
     */
    public static Origin of(String table, String id, Record said, String source, String confidence) {
        return confidence.equals(UNOPENED)
                ? new Origin(
                        source,
                        confidence,
                        table + "/" + id + "#"
                                + Integer.toHexString(said.toString().hashCode()))
                : new Origin(source, confidence);
    }

    /** Whether nobody here has opened the text: such a line is marked as unverified. */
    public boolean unverified() {
        return confidence.equals(UNOPENED);
    }
}
