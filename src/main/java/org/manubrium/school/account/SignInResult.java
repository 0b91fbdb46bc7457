package org.manubrium.school.account;

import java.time.Duration;

/** How an attempt to sign in ended. */
public sealed interface SignInResult {
    /** With a new session. */
    record Welcome(SignedIn signedIn) implements SignInResult {}

    /** Name or password is wrong, or the account is not active; which of them is not said. */
    record Wrong() implements SignInResult {}

    /** Too many wrong attempts; the password was not looked at. */
    record Throttled(Duration delay) implements SignInResult {}
}
