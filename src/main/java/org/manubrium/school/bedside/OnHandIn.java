package org.manubrium.school.bedside;

import org.manubrium.store.Attempt;
import org.manubrium.store.Stores;

/** What follows a hand-in, in the same transaction. */
@FunctionalInterface
public interface OnHandIn {
    void handedIn(Stores stores, Attempt attempt);
}
