package org.manubrium.security;

/** What a person may do here. One account may hold several. */
public enum Role {
    /** Examines patients and is marked. */
    STUDENT,
    /** Writes cases, puts them in use, makes cohorts. */
    EDUCATOR,
    /** Looks at a cohort's marks. */
    REVIEWER
}
