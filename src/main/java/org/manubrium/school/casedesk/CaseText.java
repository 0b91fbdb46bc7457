package org.manubrium.school.casedesk;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.manubrium.school.Misfilled;

/** The text of a case as it is kept: lines end in one line feed, and there is nothing in it that a database cannot hold. */
public final class CaseText {
    /** In characters. */
    static final int LONGEST = 1_000_000;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private CaseText() {}

    /**
     * The text of an uploaded file.
     *
     * @throws Misfilled if it is not UTF-8
     */
    public static String decode(byte[] file) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(file))
                    .toString();
            return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw Misfilled.in("file", "This is not a text file in UTF-8. A case is a YAML file.");
        }
    }

    /**
     * The text as it is kept.
     *
     * @throws Misfilled if it is empty, too long or no text
     */
    static String tidy(String sent) {
        String text = sent.replace("\r\n", "\n").replace('\r', '\n');
        if (text.isBlank()) {
            throw Misfilled.in("text", "Choose a file or paste the text of a case.");
        }
        if (text.length() > LONGEST) {
            throw Misfilled.in("text", "A case may have at most " + LONGEST + " characters.");
        }
        if (text.indexOf('\0') >= 0) {
            throw Misfilled.in("text", "There is a character in it that is not text.");
        }
        return text;
    }
}
