package org.manubrium.security;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PasswordsTest {
    private final Passwords passwords = new Passwords();

    @Test
    void onlyTheSamePasswordMatches() {
        String hash = passwords.hash("correct horse battery");

        assertThat(passwords.matches("correct horse battery", hash)).isTrue();
        assertThat(passwords.matches("correct horse batterY", hash)).isFalse();
        assertThat(passwords.matches("", hash)).isFalse();
    }

    @Test
    void hashNamesItsCostAndNeverComesTwice() {
        assertThat(passwords.hash("correct horse battery"))
                .startsWith("$argon2id$v=19$m=19456,t=2,p=1$")
                .isNotEqualTo(passwords.hash("correct horse battery"));
    }

    @Test
    void emptyHashLetsNobodyIn() {
        assertThat(passwords.matches("", "")).isFalse();
        assertThat(passwords.matchesNobody("anything at all")).isFalse();
    }

    @Test
    void tooShortAndTooLongAreRefusedInASentence() {
        assertThat(passwords.complaint("123456789"))
                .hasValueSatisfying(text -> assertThat(text).contains("10"));
        assertThat(passwords.complaint("1234567890")).isEmpty();
        assertThat(passwords.complaint("x".repeat(201))).isPresent();
    }
}
