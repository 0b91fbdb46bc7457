package org.manubrium.school.bedside;

import org.manubrium.store.Attempt;
import org.manubrium.store.Stores;

/** What can be done and answered in an attempt, under the teaching convention of its cohort. */
@FunctionalInterface
public interface ChoicesInForce {
    Choices of(Stores stores, Attempt attempt);
}
