package org.manubrium.web.shell;

import java.util.Optional;
import org.manubrium.security.Role;

/** Where someone goes who has just come in. */
public final class Landing {
    private Landing() {}

    /** The first page of the visitor's work, or the sign-in page. */
    public static String of(Visitor visitor) {
        if (visitor.is(Role.EDUCATOR)) {
            return "/educator";
        }
        if (visitor.is(Role.STUDENT)) {
            return "/student";
        }
        return visitor.is(Role.REVIEWER) ? "/reviewer" : "/sign-in";
    }

    /** The page someone wanted before signing in, if it is one of ours: a plain path, never another host. */
    public static Optional<String> wanted(String then) {
        boolean ours = then.startsWith("/") && !then.startsWith("//") && then.indexOf('\\') < 0;
        return ours && then.chars().noneMatch(Character::isISOControl) ? Optional.of(then) : Optional.empty();
    }
}
