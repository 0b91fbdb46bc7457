package org.manubrium.security;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Argon2id with 19 MiB, two passes, one lane (a common recommendation where
 * memory is shared with a server); about 40 ms a password. Stored in the usual PHC form
 * {@code $argon2id$v=19$m=19456,t=2,p=1$salt$hash}, so that the cost can be raised later without a flag day.
 */
public final class Passwords {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int MEMORY_KIB = 19 * 1024;
    private static final int PASSES = 2;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final String PREFIX = "$argon2id$v=19$m=" + MEMORY_KIB + ",t=" + PASSES + ",p=1$";
    private static final int SHORTEST = 10;
    private static final int LONGEST = 200;

    private final String nobodys = PREFIX + base64(random(SALT_BYTES)) + '$' + base64(random(HASH_BYTES));

    /** What is wrong with a new password, as a sentence; empty if it will do. */
    public Optional<String> complaint(String password) {
        if (password.length() < SHORTEST) {
            return Optional.of("A password needs at least " + SHORTEST + " characters.");
        }
        if (password.length() > LONGEST) {
            return Optional.of("A password may have at most " + LONGEST + " characters.");
        }
        return Optional.empty();
    }

    /** A salted hash to store. */
    public String hash(String password) {
        byte[] salt = random(SALT_BYTES);
        return PREFIX + base64(salt) + '$' + base64(argon2(password, salt));
    }

    /** Whether the password is the one hashed; false for a hash that is empty or not of this form. */
    public boolean matches(String password, String stored) {
        if (!stored.startsWith(PREFIX)) {
            return false;
        }
        String[] parts = stored.substring(PREFIX.length()).split("\\$", -1);
        byte[] salt = Base64.getDecoder().decode(parts[0]);
        byte[] expected = Base64.getDecoder().decode(parts[1]);
        return MessageDigest.isEqual(expected, argon2(password, salt));
    }

    /** Takes as long as {@link #matches} and fails, so that an unknown name cannot be told by the time it takes. */
    public boolean matchesNobody(String password) {
        matches(password, nobodys);
        return false;
    }

    private static byte[] random(int length) {
        byte[] bytes = new byte[length];
        RANDOM.nextBytes(bytes);
        return bytes;
    }

    private static byte[] argon2(String password, byte[] salt) {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withMemoryAsKB(MEMORY_KIB)
                .withIterations(PASSES)
                .withParallelism(1)
                .withSalt(salt)
                .build());
        byte[] hash = new byte[HASH_BYTES];
        generator.generateBytes(password.getBytes(StandardCharsets.UTF_8), hash);
        return hash;
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().withoutPadding().encodeToString(bytes);
    }
}
