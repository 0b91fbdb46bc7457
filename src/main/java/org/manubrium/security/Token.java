package org.manubrium.security;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/**
 * A secret handed to a browser or written into a link: 256 random bits as 43 characters of base64url. Only its
 * {@link #hash()} is ever stored. With 256 bits there is nothing to guess, so a plain SHA-256 suffices.
 */
public record Token(String text) {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 32;

    public static Token random() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return new Token(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    /** SHA-256 of the text, 64 hexadecimal characters. */
    public String hash() {
        return sha256(text);
    }

    /** Another secret that follows from this one for the given purpose and does not reveal it. */
    public String derived(String purpose) {
        return sha256(purpose + ' ' + text);
    }

    /** Compares in a time that does not depend on where the two differ. */
    public static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }

    /** SHA-256 of the UTF-8 text, 64 hexadecimal characters. */
    public static String sha256(String text) {
        return HexFormat.of().formatHex(digest().digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }

    /** Never the secret: tokens end up in messages by mistake. */
    @Override
    public String toString() {
        return "Token[hidden]";
    }
}
