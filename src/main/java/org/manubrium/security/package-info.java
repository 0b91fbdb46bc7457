/**
 * Accounts, roles, passwords, sessions and throttling, without SQL and without web types.
 *
 * <p>Doors: {@link org.manubrium.security.Passwords} for hashing, {@link org.manubrium.security.Token} for every secret
 * that is handed out, {@link org.manubrium.security.ThrottlePolicy} for how often one may be wrong.
 */
@NullMarked
package org.manubrium.security;

import org.jspecify.annotations.NullMarked;
