package org.manubrium.web;

import org.manubrium.web.student.AdvicePages;
import org.manubrium.web.student.BedsidePages;
import org.manubrium.web.student.DebriefPages;
import org.manubrium.web.student.DrillPages;
import org.manubrium.web.student.PartnerPages;
import org.manubrium.web.student.StudentPages;
import org.manubrium.web.student.SurenessPages;

/** The pages of a student. An educator may use the bedside too, to try a case. */
public record StudentRooms(
        StudentPages home,
        BedsidePages bedside,
        AdvicePages advice,
        DebriefPages debrief,
        DrillPages drill,
        SurenessPages sureness,
        PartnerPages partner) {}
