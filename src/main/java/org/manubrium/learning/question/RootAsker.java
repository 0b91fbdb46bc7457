package org.manubrium.learning.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.SegmentSet;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.convention.PublishedRoots;
import org.manubrium.marking.key.Origin;

/** Which roots: of a reflex or a movement. The wrong ones are the neighbours, and what fellow students took it for. */
final class RootAsker implements Asker {
    private final Invented invented;
    private final Conventions conventions;

    RootAsker(Invented invented, Conventions conventions) {
        this.invented = invented;
        this.conventions = conventions;
    }

    @Override
    public String kind() {
        return "roots";
    }

    @Override
    public List<String> subjects() {
        String any = conventions.ids().get(0);
        return invented.examination().manoeuvres().stream()
                .filter(m -> m.questions().contains("roots") && m.places().isEmpty())
                .filter(m -> roots(m, any).isPresent())
                .map(Manoeuvre::id)
                .toList();
    }

    private Optional<Conventions.Roots> roots(Manoeuvre manoeuvre, String convention) {
        return conventions.roots(convention, manoeuvre.id()).or(() -> conventions.roots(convention, manoeuvre.part()));
    }

    private List<PublishedRoots> published(Manoeuvre manoeuvre) {
        List<PublishedRoots> own = conventions.published(manoeuvre.id());
        return own.isEmpty() ? conventions.published(manoeuvre.part()) : own;
    }

    @Override
    public Optional<SignQuestion> ask(String subject, String convention, List<String> confused, Random random) {
        Optional<Manoeuvre> manoeuvre = invented.examination().manoeuvre(subject);
        return manoeuvre.flatMap(m -> roots(m, convention).map(roots -> ask(m, roots, confused, random)));
    }

    private SignQuestion ask(Manoeuvre manoeuvre, Conventions.Roots roots, List<String> confused, Random random) {
        SegmentSet right = roots.accepted().get(0);
        List<SegmentSet> taught = new ArrayList<>(roots.accepted());
        published(manoeuvre).forEach(p -> taught.add(p.roots()));
        List<String> wrong = new ArrayList<>();
        confused.stream()
                .flatMap(text -> SegmentSet.parse(text).stream())
                .filter(set -> !taught.contains(set))
                .limit(2)
                .forEach(set -> wrong.add(set.toString()));
        neighbours(right).stream().filter(set -> !taught.contains(set)).forEach(set -> wrong.add(set.toString()));
        Options options = Options.of(right.toString(), wrong, random);
        return new SignQuestion(
                fact(manoeuvre.id()),
                "Which roots does the " + manoeuvre.name() + " test, as they are taught to you?",
                List.of(),
                options.words(),
                options.right(),
                why(manoeuvre, roots),
                new Origin(roots.source(), roots.confidence()));
    }

    /** The same stretch one and two roots higher and lower. */
    private static List<SegmentSet> neighbours(SegmentSet right) {
        List<SegmentSet> found = new ArrayList<>();
        for (int way : List.of(-1, 1, -2, 2)) {
            List<Segment> moved = right.segments().stream()
                    .flatMap(segment -> segment.down(way).stream())
                    .toList();
            if (moved.size() == right.segments().size()) {
                found.add(SegmentSet.of(moved));
            }
        }
        return found;
    }

    private String why(Manoeuvre manoeuvre, Conventions.Roots roots) {
        String all = roots.accepted().stream().map(SegmentSet::toString).collect(Collectors.joining(" or "));
        String elsewhere = published(manoeuvre).stream()
                .map(PublishedRoots::roots)
                .filter(set -> !roots.accepted().contains(set))
                .map(SegmentSet::toString)
                .distinct()
                .collect(Collectors.joining("; "));
        return "Under your convention the " + manoeuvre.name() + " tests " + all + "."
                + (elsewhere.isEmpty() ? "" : " In print elsewhere: " + elsewhere + ".");
    }
}
