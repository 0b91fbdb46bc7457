package org.manubrium.school.cohort;

import java.time.Instant;
import org.manubrium.store.SetCase;

/** A case version to be set to a cohort, from {@code opensAt} until {@code closesAt}. */
public record Setting(long caseVersionId, Instant opensAt, Instant closesAt, SetCase.Mode mode) {}
