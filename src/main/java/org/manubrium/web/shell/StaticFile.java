package org.manubrium.web.shell;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** One file as it is sent: its media type, its tag and its bytes. */
@SuppressWarnings("ArrayRecordComponent") // read once, written to the network, never compared
record StaticFile(String type, String tag, byte[] content) {
    static StaticFile of(String type, byte[] content) {
        return new StaticFile(type, '"' + hash(content) + '"', content);
    }

    private static String hash(byte[] content) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(content);
            return HexFormat.of().formatHex(hash, 0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }
}
