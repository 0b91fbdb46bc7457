package org.manubrium.web;

import org.manubrium.web.account.WelcomePages;
import org.manubrium.web.cohort.CohortPages;
import org.manubrium.web.cohort.FactsPages;
import org.manubrium.web.cohort.JoinPages;
import org.manubrium.web.cohort.RosterPages;
import org.manubrium.web.cohort.SetWorkPages;
import org.manubrium.web.cohort.WeightsPages;
import org.manubrium.web.educator.CasePages;
import org.manubrium.web.educator.DraftPages;
import org.manubrium.web.educator.KeyPages;
import org.manubrium.web.educator.SignPages;
import org.manubrium.web.review.AttemptPage;
import org.manubrium.web.review.CsvPages;
import org.manubrium.web.review.LeaderboardPage;
import org.manubrium.web.review.ReviewPages;

/** The pages of those who teach, and the doors through which their students come in. */
public record SchoolPages(
        CasePages cases,
        DraftPages drafts,
        KeyPages keys,
        SignPages signs,
        CohortPages cohorts,
        RosterPages rosters,
        SetWorkPages work,
        WeightsPages weights,
        FactsPages facts,
        JoinPages joining,
        WelcomePages welcome,
        ReviewPages review,
        AttemptPage attempt,
        CsvPages csv,
        LeaderboardPage leaderboard) {}
