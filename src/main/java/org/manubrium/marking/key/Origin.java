package org.manubrium.marking.key;

/** Where a statement of the key comes from: ids of sources separated by ";", and how well it was seen. */
public record Origin(String source, String confidence) {

    /** Whether nobody here has opened the text: such a line is marked as unverified. */
    public boolean unverified() {
        return confidence.equals("from-memory");
    }
}
