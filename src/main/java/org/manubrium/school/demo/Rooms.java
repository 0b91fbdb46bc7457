package org.manubrium.school.demo;

import org.manubrium.school.bedside.Bedside;
import org.manubrium.school.casedesk.CasesInUse;
import org.manubrium.school.cohort.Cohorts;
import org.manubrium.school.cohort.Rosters;
import org.manubrium.school.cohort.SetWork;
import org.manubrium.school.student.StudentDesk;

/** What the school's people work with, under one clock. */
public record Rooms(
        CasesInUse cases, Cohorts cohorts, Rosters rosters, SetWork work, StudentDesk desk, Bedside bedside) {}
