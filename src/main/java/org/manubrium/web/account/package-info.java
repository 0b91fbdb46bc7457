/** Signing in and out, the first educator's account, one's own password, the demo's one-click entry. */
@NullMarked
package org.manubrium.web.account;

import org.jspecify.annotations.NullMarked;
