package org.manubrium.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.manubrium.security.Account;
import org.manubrium.security.Role;

/** Reads an account with its roles from one row, wherever it stands in a query. */
final class AccountRows {
    /** The columns {@link #account} reads, of a table named {@code a}. */
    static final String COLUMNS = "a.id as account_id, a.login_name, a.display_name, a.active,"
            + " (select string_agg(r.role, ',') from account_role r where r.account_id = a.id) as roles";

    private AccountRows() {}

    static Account account(ResultSet row) throws SQLException {
        return new Account(
                row.getLong("account_id"),
                row.getString("login_name"),
                row.getString("display_name"),
                roles(row),
                row.getBoolean("active"));
    }

    private static Set<Role> roles(ResultSet row) throws SQLException {
        String roles = row.getString("roles");
        return roles == null
                ? Set.of()
                : Arrays.stream(roles.split(",")).map(Role::valueOf).collect(Collectors.toUnmodifiableSet());
    }
}
