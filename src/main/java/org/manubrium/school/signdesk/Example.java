package org.manubrium.school.signdesk;

import java.util.Optional;

/**
 * A condition that changes a sign.
 *
 * @param level the level at which it does; empty if the condition has none
 * @param reading what is then read, in words, at the place where it differs most plainly
 */
public record Example(String condition, String name, boolean sided, Optional<String> level, String reading) {}
