package org.manubrium.security;

import java.util.Set;

/**
 * Someone who may sign in.
 *
 * @param loginName as the person wrote it; unique whatever its case
 * @param active an inactive account keeps its work and cannot sign in
 */
public record Account(long id, String loginName, String displayName, Set<Role> roles, boolean active) {
    public Account {
        roles = Set.copyOf(roles);
    }

    public boolean is(Role role) {
        return roles.contains(role);
    }
}
