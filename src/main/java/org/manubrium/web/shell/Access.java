package org.manubrium.web.shell;

import io.javalin.security.RouteRole;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.manubrium.security.Role;

/** Who may use a route. Every route names at least one; one that names none is closed to everybody. */
public enum Access implements RouteRole {
    ANYONE(Optional.empty()),
    STUDENT(Optional.of(Role.STUDENT)),
    EDUCATOR(Optional.of(Role.EDUCATOR)),
    REVIEWER(Optional.of(Role.REVIEWER));

    /** Everyone who has signed in, for {@code routes.get(path, handler, SIGNED_IN)}. */
    @SuppressWarnings("MutablePublicArray") // Javalin's routes take an array, and it is read at start only
    public static final RouteRole[] SIGNED_IN = {STUDENT, EDUCATOR, REVIEWER};

    private final Optional<Role> role;

    Access(Optional<Role> role) {
        this.role = role;
    }

    static boolean isOpen(Set<RouteRole> route) {
        return route.contains(ANYONE);
    }

    /** Whether someone with these roles may use a route that names those. */
    static boolean permits(Set<RouteRole> route, Set<Role> held) {
        return isOpen(route)
                || Arrays.stream(values())
                        .filter(route::contains)
                        .anyMatch(access -> access.role.filter(held::contains).isPresent());
    }
}
