package org.manubrium.store;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.manubrium.security.Account;
import org.manubrium.security.Role;

/** Accounts and their roles. */
public final class AccountStore {
    private final Handle handle;

    AccountStore(Handle handle) {
        this.handle = handle;
    }

    /** A new account; an empty password hash is one nobody can sign in with. A taken login name is a duplicate. */
    public Account add(String loginName, String displayName, String passwordHash, Set<Role> roles, Instant now) {
        long id = handle.createUpdate(
                        "insert into account (login_name, login_folded, display_name, password_hash, created_at)"
                                + " values (:login, :folded, :name, :hash, :now)")
                .bind("login", loginName)
                .bind("folded", folded(loginName))
                .bind("name", displayName)
                .bind("hash", passwordHash)
                .bind("now", now)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        roles.forEach(role -> addRole(id, role));
        return new Account(id, loginName, displayName, roles, true);
    }

    private void addRole(long account, Role role) {
        handle.execute("insert into account_role (account_id, role) values (?, ?)", account, role.name());
    }

    public boolean isEmpty() {
        return handle.createQuery("select count(*) from account")
                        .mapTo(Long.class)
                        .one()
                == 0;
    }

    public Optional<Account> find(long id) {
        return handle.createQuery("select " + AccountRows.COLUMNS + " from account a where a.id = :id")
                .bind("id", id)
                .map((row, context) -> AccountRows.account(row))
                .findOne();
    }

    /** By login name, whatever its case. */
    public Optional<Account> named(String loginName) {
        return handle.createQuery("select " + AccountRows.COLUMNS + " from account a where a.login_folded = :folded")
                .bind("folded", folded(loginName))
                .map((row, context) -> AccountRows.account(row))
                .findOne();
    }

    /** Everyone who holds the role, by display name. */
    public List<Account> withRole(Role role) {
        return handle.createQuery("select " + AccountRows.COLUMNS + " from account a"
                        + " join account_role held on held.account_id = a.id and held.role = :role"
                        + " order by a.display_name, a.id")
                .bind("role", role.name())
                .map((row, context) -> AccountRows.account(row))
                .list();
    }

    public String passwordHash(long id) {
        return handle.createQuery("select password_hash from account where id = :id")
                .bind("id", id)
                .mapTo(String.class)
                .one();
    }

    public void setPasswordHash(long id, String hash) {
        handle.execute("update account set password_hash = ? where id = ?", hash, id);
    }

    private static String folded(String loginName) {
        return loginName.toLowerCase(Locale.ROOT);
    }
}
