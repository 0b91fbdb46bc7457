package org.manubrium.learning.question;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Item;
import org.manubrium.examination.Level;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.PlaceMode;
import org.manubrium.examination.Reading;
import org.manubrium.examination.ReadingKind;
import org.manubrium.examination.Scale;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.key.Origin;
import org.manubrium.patient.Body;
import org.manubrium.patient.Condition;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Person;

/** Read this sign: on a patient of any kind, healthy ones too. The other levels of the scale are the wrong answers. */
final class ReadAsker implements Asker {
    private static final int HEALTHY_ONE_IN = 4;
    private static final int LONGEST_SCALE = 8;
    private static final double LEAST = 0.3;

    private final Invented invented;
    private final Conventions conventions;
    private final Affecting affecting;

    ReadAsker(Invented invented, Conventions conventions, Affecting affecting) {
        this.invented = invented;
        this.conventions = conventions;
        this.affecting = affecting;
    }

    @Override
    public String kind() {
        return "read";
    }

    @Override
    public List<String> subjects() {
        return invented.examination().manoeuvres().stream()
                .filter(m -> m.kind() != ReadingKind.MEASURED && m.intimacy().equals("none"))
                .filter(m -> m.placeMode() != PlaceMode.TOGETHER)
                .filter(m -> invented.examination().scale(m.scale()).levels().size() <= LONGEST_SCALE)
                .map(Manoeuvre::id)
                .toList();
    }

    @Override
    public Optional<SignQuestion> ask(String subject, String convention, List<String> confused, Random random) {
        return invented.examination().manoeuvre(subject).flatMap(manoeuvre -> ask(manoeuvre, convention, random));
    }

    /** One time in four the patient is healthy; otherwise ill, more or less, with something that can change the sign. */
    private Optional<SignQuestion> ask(Manoeuvre manoeuvre, String convention, Random random) {
        Person person = invented.person(random);
        Body healthy = invented.healthy(person);
        List<Condition> causes = affecting.of(manoeuvre);
        Body patient = causes.isEmpty() || random.nextInt(HEALTHY_ONE_IN) == 0
                ? healthy
                : ill(person, causes.get(random.nextInt(causes.size())), random);
        List<Item> items = invented.shown(manoeuvre, patient, healthy);
        List<Item> changed = items.stream()
                .filter(i -> !invented.alike(manoeuvre, i, patient, healthy))
                .toList();
        List<Item> from = changed.isEmpty() || random.nextInt(HEALTHY_ONE_IN) == 0 ? items : changed;
        Item item = from.get(random.nextInt(from.size()));
        Scale scale = scale(manoeuvre, convention);
        String code = code(scale, invented.finding(patient, manoeuvre, item));
        return scale.rank(code) < 0
                ? Optional.empty()
                : Optional.of(question(manoeuvre, scale, code, item, patient, items));
    }

    private Body ill(Person person, Condition cause, Random random) {
        double severity = LEAST + (1 - LEAST) * random.nextDouble();
        return invented.with(person, invented.said(cause, random), severity);
    }

    private SignQuestion question(
            Manoeuvre manoeuvre, Scale scale, String code, Item item, Body patient, List<Item> items) {
        Level level = scale.levels().get(scale.rank(code));
        Options options = Options.inOrder(
                words(level),
                scale.levels().stream().map(ReadAsker::words).distinct().toList());
        String side = item.side() == Side.NONE ? "" : ", " + item.side().word();
        return new SignQuestion(
                fact(manoeuvre.id()),
                "Read the " + manoeuvre.name() + side + on(manoeuvre, scale) + ".",
                List.of(invented.panel("", patient, manoeuvre, items)),
                options.words(),
                options.right(),
                "What is shown is " + words(level) + "." + slips(manoeuvre),
                new Origin(scale.source() + ";" + manoeuvre.source(), manoeuvre.confidence()));
    }

    private static String slips(Manoeuvre manoeuvre) {
        return manoeuvre.goesWrong().isBlank() ? "" : " What often goes wrong here: " + manoeuvre.goesWrong();
    }

    private static String on(Manoeuvre manoeuvre, Scale scale) {
        return manoeuvre.name().toLowerCase(Locale.ROOT).startsWith(scale.name().toLowerCase(Locale.ROOT))
                ? ""
                : ", on the scale: " + scale.name();
    }

    private Scale scale(Manoeuvre manoeuvre, String convention) {
        Scale own = invented.examination().scale(manoeuvre.scale());
        return conventions
                .scale(convention, own.quantity())
                .map(invented.examination()::scale)
                .orElse(own);
    }

    private String code(Scale scale, Finding finding) {
        Reading reading = invented.reading(scale.id(), finding);
        return reading instanceof Reading.Grade grade ? grade.grade() : ((Reading.Seen) reading).seen();
    }

    private static String words(Level level) {
        return level.label().isBlank() || level.label().equals(level.code())
                ? level.code()
                : level.code().length() > 3 ? level.label() : level.code() + ": " + level.label();
    }
}
