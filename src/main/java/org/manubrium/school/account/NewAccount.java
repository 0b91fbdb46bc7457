package org.manubrium.school.account;

/** What someone writes to get an account. */
public record NewAccount(String loginName, String displayName, String password) {
    public NewAccount {
        loginName = loginName.strip();
        displayName = displayName.strip();
    }
}
