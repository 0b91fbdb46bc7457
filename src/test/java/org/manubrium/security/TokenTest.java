package org.manubrium.security;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TokenTest {
    @Test
    void tokenHas256BitsAndIsNeverPrinted() {
        Token token = Token.random();

        assertThat(token.text()).hasSize(43).isNotEqualTo(Token.random().text());
        assertThat(token.toString()).doesNotContain(token.text());
    }

    @Test
    void hashIsSha256() {
        assertThat(new Token("abc").hash())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void whatIsDerivedDependsOnTokenAndPurpose() {
        Token token = new Token("abc");

        assertThat(token.derived("csrf")).isEqualTo(new Token("abc").derived("csrf"));
        assertThat(token.derived("csrf"))
                .isNotEqualTo(token.derived("other"))
                .isNotEqualTo(new Token("abd").derived("csrf"))
                .isNotEqualTo(token.hash());
    }
}
