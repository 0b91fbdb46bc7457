package org.manubrium.school.cohort;

import org.manubrium.security.Token;

/** A student's way in, known at this moment only: the link sets the password, once. */
public record NewPlace(String name, String loginName, Token link) {}
