package org.manubrium.learning.question;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.learning.question.SignQuestion.Panel;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Conditions;
import org.manubrium.patient.Person;

/**
 * Where is it: signs of one damaged place are shown, and the wrong answers are the levels beside it and the places that
 * change the same manoeuvres. What is shown tells the place from each of them.
 */
final class WhereAsker implements Asker {
    private static final int SIGNS = 3;
    private static final int LEAST_WRONG = 2;

    private final Invented invented;
    private final Affecting affecting;
    private final Alikes alikes;
    private final Written written;

    WhereAsker(Invented invented, Affecting affecting) {
        this.invented = invented;
        this.affecting = affecting;
        this.alikes = new Alikes(affecting);
        this.written = new Written(invented);
    }

    @Override
    public String kind() {
        return "where";
    }

    @Override
    public List<String> subjects() {
        return affecting.illnesses().stream()
                .filter(WhereAsker::inOnePlace)
                .map(Condition::id)
                .toList();
    }

    private static boolean inOnePlace(Condition condition) {
        return condition.effects().size() == 1
                && !condition.effects().get(0).site().isBlank();
    }

    private static String place(Invented.Said said) {
        return Conditions.site(said.condition().effects().get(0).site(), said.side(), said.level());
    }

    @Override
    public Optional<SignQuestion> ask(String subject, String convention, List<String> confused, Random random) {
        return invented.conditions()
                .condition(subject)
                .filter(WhereAsker::inOnePlace)
                .flatMap(condition -> ask(condition, random));
    }

    private Optional<SignQuestion> ask(Condition condition, Random random) {
        Person person = invented.person(random);
        Invented.Said truth = invented.said(condition, random);
        Body ill = invented.with(person, truth, 1);
        Map<String, Body> wrong = rivals(truth, random)
                .collect(Collectors.toMap(
                        WhereAsker::place, said -> invented.with(person, said, 1), (a, b) -> a, LinkedHashMap::new));
        wrong.remove(place(truth));
        List<Manoeuvre> shown = telling(condition, ill, invented.healthy(person), wrong, random);
        wrong.values().removeIf(other -> shown.stream().allMatch(m -> invented.alike(m, ill, other)));
        return wrong.size() < LEAST_WRONG || shown.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        question(truth, ill, invented.healthy(person), List.copyOf(wrong.keySet()), shown, random));
    }

    /** The levels of the same thing, and places that change the same manoeuvres. */
    private Stream<Invented.Said> rivals(Invented.Said truth, Random random) {
        Stream<Invented.Said> levels =
                truth.condition().levels().stream().limit(SIGNS).map(truth::at);
        Stream<Invented.Said> others = alikes.of(truth.condition(), random).stream()
                .filter(WhereAsker::inOnePlace)
                .map(other -> invented.beside(truth, other, random));
        return Stream.concat(levels, others);
    }

    /** At most three signs, taken so that each tells the place from as many others as can be. */
    private List<Manoeuvre> telling(
            Condition condition, Body ill, Body healthy, Map<String, Body> wrong, Random random) {
        List<Manoeuvre> changed = new ArrayList<>(affecting.by(condition).stream()
                .filter(m -> !invented.alike(m, ill, healthy))
                .toList());
        Collections.shuffle(changed, random);
        List<Body> left = new ArrayList<>(wrong.values());
        List<Manoeuvre> taken = new ArrayList<>();
        for (Manoeuvre manoeuvre : changed) {
            boolean tells = left.stream().anyMatch(other -> !invented.alike(manoeuvre, ill, other));
            if (tells && taken.size() < SIGNS) {
                taken.add(manoeuvre);
                left.removeIf(other -> !invented.alike(manoeuvre, ill, other));
            }
        }
        return taken;
    }

    private SignQuestion question(
            Invented.Said truth, Body ill, Body healthy, List<String> wrong, List<Manoeuvre> shown, Random random) {
        Options options = Options.of(place(truth), wrong, random);
        List<Panel> panels = shown.stream()
                .map(m -> invented.panel(m.name(), ill, m, invented.shown(m, ill, healthy)))
                .toList();
        String signs = shown.stream()
                .map(m -> written.readings(ill, m, invented.shown(m, ill, healthy)))
                .collect(Collectors.joining("; "));
        return new SignQuestion(
                fact(truth.condition().id()),
                "One place is damaged in this patient. Where?",
                panels,
                options.words(),
                options.right(),
                "It is " + place(truth) + ": " + signs
                        + ". Each of the other places would have left one of these otherwise.",
                Written.origin(truth.condition(), shown));
    }
}
