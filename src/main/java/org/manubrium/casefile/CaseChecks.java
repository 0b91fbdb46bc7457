package org.manubrium.casefile;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.examination.Reading;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.sign.Signs;
import org.manubrium.tables.Reference;

/** Checks that need the whole case: what the texts give away, and whether the differential can be decided. */
final class CaseChecks {
    private final Reference reference;
    private final Problems problems;
    private final CaseFile read;

    CaseChecks(Reference reference, Problems problems, CaseFile read) {
        this.reference = reference;
        this.problems = problems;
        this.read = read;
    }

    void run(CaseReader.Told texts, Mapping file, List<Placed<ConditionUse>> differential, boolean whole) {
        texts.title().ifPresent(text -> givesAway("title", text));
        texts.vignette().ifPresent(text -> givesAway("vignette", text));
        if (whole && !differential.isEmpty()) {
            Truth truth = new Truth(read, reference);
            holdsTheTruth(file, truth);
            separable(differential, truth);
        }
        accepted(file);
    }

    /** The patient's answers and the observations, once they are known to be readable. */
    void told(Mapping file) {
        file.pairs("history").values().forEach(text -> givesAway("history", text));
        file.mappings("observations", ToldReader.OBSERVATION_KEYS)
                .forEach(entry -> entry.text("text").ifPresent(text -> givesAway("observations", text)));
    }

    private void givesAway(String where, Text text) {
        for (ConditionUse use : read.current(reference)) {
            reference.conditions().condition(use.is()).ifPresent(condition -> {
                if (names(text.words(), condition)) {
                    problems.add(
                            text.line(),
                            "gives-away",
                            where + ": names \"" + condition.name()
                                    + "\", which the student is to find: expected what the patient would tell");
                }
            });
        }
    }

    /** By its name, by its id, or by all words of its id within one sentence. */
    private static boolean names(String text, Condition condition) {
        List<String> words = Arrays.asList(condition.id().split("-", -1));
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[.!?;]", -1))
                .map(sentence -> sentence.replaceAll("\\s+", " "))
                .anyMatch(sentence -> sentence.contains(condition.name().toLowerCase(Locale.ROOT))
                        || sentence.contains(condition.id())
                        || words.stream()
                                .allMatch(word -> Pattern.compile("\\b" + word + "\\b")
                                        .matcher(sentence)
                                        .find()));
    }

    private void holdsTheTruth(Mapping file, Truth truth) {
        for (String missing : truth.missing()) {
            problems.add(
                    file.lineOf("differential"),
                    "differential",
                    "differential: expected the truth among the rivals, found no \"" + missing + "\"");
        }
    }

    /** Every rival must show something else than the truth does, somewhere. */
    private void separable(List<Placed<ConditionUse>> differential, Truth truth) {
        for (Placed<ConditionUse> rival : differential) {
            boolean rivals = !truth.holds(rival.thing());
            if (rivals && !differ(truth.body(), read.body(reference, rival.thing()))) {
                problems.add(
                        rival.line(),
                        "inseparable",
                        "differential: no manoeuvre tells \""
                                + rival.thing().said(reference.conditions())
                                + "\" from the patient as described: expected a rival that differs in a sign");
            }
        }
    }

    private boolean differ(Body one, Body other) {
        return reference.signs().examination().manoeuvres().stream()
                .anyMatch(manoeuvre -> differ(one, other, manoeuvre));
    }

    private boolean differ(Body one, Body other, Manoeuvre manoeuvre) {
        return Examination.items(manoeuvre).stream()
                .map(item -> Signs.usual(manoeuvre, item))
                .anyMatch(probe -> !reading(one, manoeuvre, probe).equals(reading(other, manoeuvre, probe)));
    }

    private Reading reading(Body body, Manoeuvre manoeuvre, Probe probe) {
        return reference.signs().reading(manoeuvre, reference.signs().finding(body, probe));
    }

    private void accepted(Mapping file) {
        List<String> accepted = read.conclusion().diagnosis();
        Optional<ConditionUse> left = read.current(reference).stream()
                .filter(use -> !accepted.contains(use.is()))
                .findFirst();
        if (!accepted.isEmpty() && left.isPresent()) {
            problems.add(
                    file.lineOf("conclusion"),
                    "conclusion",
                    "conclusion.diagnosis: expected the case's own \""
                            + left.get().is() + "\" among those accepted");
        }
    }
}
