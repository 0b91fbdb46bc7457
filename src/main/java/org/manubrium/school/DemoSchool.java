package org.manubrium.school;

import org.manubrium.store.Database;

/** Fills an empty throw-away database with something to look at, after the demo accounts have been made. */
@FunctionalInterface
public interface DemoSchool {
    void seed(Database database);
}
