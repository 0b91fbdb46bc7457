package org.manubrium.school.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Reading;
import org.manubrium.marking.event.Event;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.ConclusionKey;
import org.manubrium.marking.key.ConclusionKey.Diagnosis;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.ReadingKey;
import org.manubrium.school.bedside.Bedside;

/** What an invented student does at the bedside of one case, from the first question to the hand-in. */
final class Encounters {
    private final Examination examination;
    private final CompiledKey key;
    private final String convention;

    Encounters(Examination examination, CompiledKey key, String convention) {
        this.examination = examination;
        this.key = key;
        this.convention = convention;
    }

    /** The events in order; the same slips give the same events. */
    List<Event> of(Slip student) {
        List<Event> events = new ArrayList<>();
        List.of("consent", "pain", "chaperone", "faints", "help", "neck-injury").stream()
                .filter(question -> student.right())
                .forEach(question -> events.add(new Event.Asked(question)));
        String lies = Bedside.START;
        for (KeyLine line : inOrderOfPosition()) {
            if (!student.forgets()) {
                String position = position(line);
                if (!position.equals(lies)) {
                    events.add(new Event.Moved(position));
                    lies = position;
                }
                examine(events, line, student);
            }
        }
        conclude(events, key.conclusion(), student);
        events.add(new Event.HandedIn());
        return List.copyOf(events);
    }

    private List<KeyLine> inOrderOfPosition() {
        return key.essentials().stream()
                .sorted(Comparator.comparing((KeyLine line) -> !position(line).equals(Bedside.START))
                        .thenComparing(this::position))
                .toList();
    }

    private String position(KeyLine line) {
        Manoeuvre manoeuvre = examination.manoeuvre(line.item().manoeuvre()).orElseThrow();
        List<String> allowed = manoeuvre.positions();
        return line.showing().positions().stream()
                .filter(allowed::contains)
                .findFirst()
                .orElse(allowed.get(0));
    }

    private void examine(List<Event> events, KeyLine line, Slip student) {
        Item item = line.item();
        Reading reading = student.reading(line, convention);
        events.add(new Event.Probed(item, Map.of()));
        reinforcement(line, reading).ifPresent(technique -> events.add(new Event.Probed(item, technique)));
        events.add(new Event.Recorded(item, reading));
        boolean normal = line.form(convention).normal();
        if (line.asks("normal")) {
            boolean said = student.right() == normal;
            events.add(new Event.Answered(item, "normal", List.of(said ? "normal" : "abnormal")));
        }
        if (line.asks("roots") && !line.form(convention).roots().isEmpty()) {
            events.add(new Event.Answered(
                    item, "roots", student.roots(line.form(convention).roots().get(0))));
        }
        if (!normal) {
            interpret(events, line, student);
        }
    }

    private static void interpret(List<Event> events, KeyLine line, Slip student) {
        if (line.asks("means") && !line.means().term().isEmpty()) {
            List<String> others = line.means().related();
            String term = student.right() || others.isEmpty() ? line.means().term() : student.any(others);
            events.add(new Event.Answered(line.item(), "means", List.of(term)));
        }
        if (line.asks("site") && !line.site().place().isEmpty()) {
            events.add(new Event.Answered(line.item(), "site", List.of(student.site(line.site()))));
        }
    }

    /** The lowest level may be written down only after reinforcement has been tried. */
    private static Optional<Map<String, String>> reinforcement(KeyLine line, Reading reading) {
        boolean lowest = reading instanceof Reading.Grade grade
                && line.reading() instanceof ReadingKey.Graded graded
                && graded.on(grade.scale())
                        .filter(scale -> scale.codes().get(0).equals(grade.grade()))
                        .isPresent();
        return line.showing().lowestNeeds().stream()
                .filter(need -> lowest)
                .findFirst()
                .map(need -> need.split("=", 2))
                .map(need -> Map.of(need[0], need[1]));
    }

    private static void conclude(List<Event> events, ConclusionKey conclusion, Slip student) {
        List<String> sites = conclusion.sites().stream().map(student::site).toList();
        answer(events, "site", sites.isEmpty() ? List.of("none") : sites);
        answer(events, "differential", differential(conclusion, student));
        if (!conclusion.next().isEmpty() && student.right()) {
            answer(events, "next", List.of(conclusion.next().get(0)));
        }
    }

    private static List<String> differential(ConclusionKey conclusion, Slip student) {
        List<String> truths =
                conclusion.truths().stream().map(Diagnosis::id).distinct().toList();
        List<String> others = conclusion.differential().stream()
                .map(Diagnosis::id)
                .filter(id -> !truths.contains(id))
                .distinct()
                .toList();
        List<String> named = new ArrayList<>(truths);
        if (!others.isEmpty()) {
            named.add(student.right() ? named.size() : 0, student.any(others));
        }
        List<String> sure = new ArrayList<>();
        for (int i = 0; i < named.size(); i++) {
            sure.add(named.get(i) + "=" + Math.max(5, 70 - 40 * i));
        }
        return sure;
    }

    private static void answer(List<Event> events, String question, List<String> answer) {
        events.add(new Event.Answered(Event.CONCLUSION, question, answer));
    }
}
