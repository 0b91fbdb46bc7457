package org.manubrium.school.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.manubrium.school.account.SignInResult.Throttled;
import org.manubrium.school.account.SignInResult.Welcome;
import org.manubrium.school.account.SignInResult.Wrong;
import org.manubrium.security.Passwords;
import org.manubrium.security.Role;
import org.manubrium.security.Token;
import org.manubrium.store.Database;
import org.manubrium.store.DatabaseSettings;

class SignInTest {
    private static final String PASSWORD = "correct horse battery";
    private static final String HERE = "192.0.2.1";

    private final MovableClock clock = new MovableClock();
    private final Database database = Database.open(DatabaseSettings.throwAway(4));
    private final Passwords passwords = new Passwords();
    private final Sessions sessions = new Sessions(database, clock);
    private final Accounts accounts = new Accounts(database, passwords, sessions, clock);
    private final SignIn signIn = new SignIn(database, passwords, sessions, clock);

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void rightPasswordOpensASessionThatLastsTwelveHours() {
        make("rowan");

        SignedIn signedIn = welcome(signIn.attempt("Rowan", PASSWORD, HERE));

        assertThat(sessions.find(signedIn.cookie())).contains(signedIn.session());
        clock.pass(Duration.ofHours(12).minusSeconds(1));
        assertThat(sessions.find(signedIn.cookie())).isPresent();
        clock.pass(Duration.ofSeconds(1));
        assertThat(sessions.find(signedIn.cookie())).isEmpty();
    }

    @Test
    void wrongPasswordAndUnknownNameAreAnsweredAlike() {
        make("rowan");

        assertThat(signIn.attempt("rowan", "wrong", HERE)).isEqualTo(signIn.attempt("nobody", "wrong", HERE));
    }

    @Test
    void sixthWrongPasswordIsThrottledAndSoIsTheRightOneUntilAQuarterOfAnHourHasPassed() {
        make("rowan");
        for (int i = 0; i < 5; i++) {
            assertThat(signIn.attempt("rowan", "wrong", HERE)).isInstanceOf(Wrong.class);
        }

        assertThat(signIn.attempt("rowan", "wrong", HERE)).isEqualTo(new Throttled(Duration.ofMinutes(15)));
        assertThat(signIn.attempt("ROWAN", PASSWORD, "192.0.2.2")).isInstanceOf(Throttled.class);
        clock.pass(Duration.ofMinutes(15));
        assertThat(signIn.attempt("rowan", PASSWORD, HERE)).isInstanceOf(Welcome.class);
    }

    @Test
    void manyAtOnceDoNotSlipPastTheCount() {
        make("rowan");

        long looked = IntStream.range(0, 12)
                .parallel()
                .mapToObj(i -> signIn.attempt("rowan", "wrong", HERE))
                .filter(Wrong.class::isInstance)
                .count();

        assertThat(looked).isEqualTo(5);
    }

    @Test
    void takenNameAndPoorPasswordAreRefusedInSentences() {
        make("rowan");

        assertThatThrownBy(() -> make("ROWAN")).isInstanceOf(Refused.class).hasMessageContaining("taken");
        assertThatThrownBy(() -> accounts.make(new NewAccount("yarrow", "Yarrow", "short"), Set.of()))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("10");
        assertThatThrownBy(() -> accounts.make(new NewAccount("a b", "Yarrow", PASSWORD), Set.of()))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("sign-in name");
        assertThatThrownBy(() -> accounts.make(new NewAccount("yarrow", "  ", PASSWORD), Set.of()))
                .isInstanceOf(Refused.class);
    }

    @Test
    void newLinkForTheFirstEducatorEndsTheOldOneAndExpiresAfterADay() {
        Token old = accounts.firstEducatorLink().orElseThrow();
        Token link = accounts.firstEducatorLink().orElseThrow();

        assertThat(accounts.isFirstEducatorLink(old)).isFalse();
        assertThat(accounts.isFirstEducatorLink(link)).isTrue();
        clock.pass(Duration.ofHours(24));
        assertThat(accounts.isFirstEducatorLink(link)).isFalse();
        make("rowan");
        assertThat(accounts.firstEducatorLink()).isEmpty();
    }

    private void make(String name) {
        accounts.make(new NewAccount(name, "Person " + name, PASSWORD), Set.of(Role.STUDENT));
    }

    private static SignedIn welcome(SignInResult result) {
        assertThat(result).isInstanceOf(Welcome.class);
        return ((Welcome) result).signedIn();
    }
}
