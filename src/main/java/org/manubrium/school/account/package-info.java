/**
 * Coming in and going out: signing in, the session, the first educator's account, a change of password, the demo's
 * people. Door: {@link org.manubrium.school.account.Accounts}.
 */
@NullMarked
package org.manubrium.school.account;

import org.jspecify.annotations.NullMarked;
