package org.manubrium;

import java.time.Clock;
import java.util.Map;
import java.util.stream.Collectors;
import org.manubrium.examination.Examination;
import org.manubrium.learning.question.QuestionMaker;
import org.manubrium.school.bedside.Bedside;
import org.manubrium.school.bedside.Patients;
import org.manubrium.school.bedside.TabledChoices;
import org.manubrium.school.drill.DrillDesk;
import org.manubrium.school.mark.Debriefs;
import org.manubrium.school.mark.HowSure;
import org.manubrium.school.mark.Marks;
import org.manubrium.school.mark.Profiles;
import org.manubrium.school.student.StudentDesk;
import org.manubrium.store.Database;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Source;
import org.manubrium.web.StudentRooms;
import org.manubrium.web.shell.DebriefView;
import org.manubrium.web.shell.ProfileView;
import org.manubrium.web.shell.View;
import org.manubrium.web.student.AdvicePages;
import org.manubrium.web.student.BedsidePages;
import org.manubrium.web.student.DebriefPages;
import org.manubrium.web.student.DrillPages;
import org.manubrium.web.student.PartnerPages;
import org.manubrium.web.student.StudentPages;
import org.manubrium.web.student.SurenessPages;

/** Puts the student's part together: the desk, the bedside, the mark. */
record StudentWing(
        StudentDesk desk,
        Bedside bedside,
        Debriefs debriefs,
        DebriefView debriefView,
        DrillDesk drill,
        Map<String, String> citations,
        Profiles profiles,
        HowSure howSure,
        Examination examination) {

    static StudentWing of(Database database, Reference reference, MarkingWing marking, Clock clock) {
        var conventions = reference.marking().conventions();
        Marks marks = marking.marks();
        Map<String, String> citations =
                reference.sources().stream().collect(Collectors.toMap(Source::id, Source::citation));
        Patients patients = new Patients(reference);
        TabledChoices choices = new TabledChoices(reference, conventions::scale);
        Bedside bedside = new Bedside(
                database,
                reference.signs(),
                patients,
                (stores, attempt) -> choices.under(marks.convention(stores, attempt)),
                marks,
                clock);
        return new StudentWing(
                new StudentDesk(database, clock),
                bedside,
                new Debriefs(
                        database,
                        patients,
                        reference.examination(),
                        conventions,
                        marking.teaching(patients, conventions, reference.signs())),
                new DebriefView(citations, new ProfileView(marking.profiles())::model),
                new DrillDesk(
                        database,
                        new QuestionMaker(
                                reference.anatomy(),
                                reference.physiology(),
                                reference.conditions(),
                                reference.signs(),
                                conventions),
                        marking.toDrill(),
                        choices::under,
                        conventions.ids().get(0),
                        clock),
                citations,
                marking.profiles(),
                marking.howSure(),
                reference.examination());
    }

    StudentRooms rooms(View view) {
        return new StudentRooms(
                new StudentPages(view, desk),
                new BedsidePages(view, bedside),
                new AdvicePages(profiles),
                new DebriefPages(view, debriefs, debriefView),
                new DrillPages(view, drill, citations),
                new SurenessPages(view, howSure),
                new PartnerPages(view, examination));
    }
}
