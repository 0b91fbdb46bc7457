package org.manubrium.school.account;

import org.manubrium.security.Session;
import org.manubrium.security.Token;

/** A session just opened, with the cookie that belongs to it; the only moment at which the cookie is known. */
public record SignedIn(Token cookie, Session session) {}
