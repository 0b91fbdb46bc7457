package org.manubrium.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.AnatomyTables;
import org.manubrium.examination.Examination;
import org.manubrium.patient.Conditions;
import org.manubrium.patient.Physiology;
import org.manubrium.patient.sign.Meanings;
import org.manubrium.patient.sign.Readers;
import org.manubrium.patient.sign.Signs;

/** Builds the {@link Reference} from table files, or says every reason why it cannot. */
public final class Tables {
    private static final Set<String> CONFIDENCES =
            Set.of("seen", "seen-secondary", "from-memory", "common-practice", "design-value");

    private Tables() {}

    /** The reference built from the tables that are shipped: built once, as it never changes. */
    public static Reference shipped() {
        return Shipped.REFERENCE;
    }

    /** Built when it is first wanted. */
    private static final class Shipped {
        static final Reference REFERENCE = build(TableFiles.shipped());
    }

    /**
     * The reference built from these tables.
     *
     * @throws BadTables with every bad row
     */
    public static Reference build(TableFiles files) {
        List<Source> sources = files.rows(
                "sources", r -> new Source(r.word("id"), r.word("citation"), r.word("standing"), r.text("note")));
        checkSources(files, sources);
        AnatomyTables anatomyTables = new AnatomyRows(files).read();
        Anatomy anatomy = new Anatomy(anatomyTables);
        Examination examination = new Examination(new ExaminationRows(files, anatomyTables.points()).read());
        PatientRows patient = new PatientRows(files);
        Physiology physiology = patient.physiology();
        Conditions conditions =
                new Conditions(anatomy, physiology, patient.conditions(anatomy, physiology), patient.states());
        Signs signs =
                new Signs(examination, Readers.all(examination), new Meanings(patient.meaningTerms(), examination));
        return new Reference(
                anatomy,
                examination,
                physiology,
                conditions,
                signs,
                new MarkingRows(files).read(),
                new ReasoningRows(files).read(),
                nextSteps(files),
                sources,
                files.hash());
    }

    private static List<NextStep> nextSteps(TableFiles files) {
        return files.rows(
                "next_steps", r -> new NextStep(r.word("id"), r.word("name"), r.word("source"), r.word("confidence")));
    }

    /** Every row of every table names known sources and one of the agreed confidences. */
    private static void checkSources(TableFiles files, List<Source> sources) {
        Set<String> known = new TreeSet<>(sources.stream().map(Source::id).toList());
        List<TableProblem> problems = new ArrayList<>();
        files.rows("index", r -> r.word("table")).stream()
                .distinct()
                .filter(table -> !table.equals("sources") && !table.equals("index"))
                .forEach(table -> files.rows(table, r -> problems.addAll(sourced(r, known))));
        if (!problems.isEmpty()) {
            throw new BadTables(problems);
        }
    }

    private static List<TableProblem> sourced(Row r, Set<String> known) {
        List<TableProblem> found = new ArrayList<>();
        for (String id : r.word("source").split(";", -1)) {
            if (!known.contains(id.trim())) {
                found.addAll(r.bad("source: \"" + id.trim() + "\" is not in the table of sources")
                        .problems());
            }
        }
        if (!CONFIDENCES.contains(r.word("confidence"))) {
            found.addAll(r.bad("confidence: expected one of " + new TreeSet<>(CONFIDENCES) + ", found \""
                            + r.text("confidence") + "\"")
                    .problems());
        }
        return found;
    }
}
