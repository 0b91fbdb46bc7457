package org.manubrium.school;

import java.util.List;
import org.manubrium.store.Database;

/** Fills an empty throw-away database with something to look at, after the demo accounts have been made. */
@FunctionalInterface
public interface DemoSchool {
    /** Returns what need not keep a visitor waiting: to be done one after another once the doors are open. */
    List<Runnable> seed(Database database);
}
