package org.manubrium.marking.key;

import java.util.List;
import java.util.stream.Stream;
import org.manubrium.anatomy.SegmentSet;
import org.manubrium.examination.Item;

/**
 * What the key says of one item.
 *
 * @param name the manoeuvre's name; {@code label} adds side and place
 * @param together whether one probe of the manoeuvre shows all of its places at once
 * @param questions what is asked of it: normal, roots, site, means
 * @param forms one for each convention
 * @param published root sets that are in print, whoever teaches them
 * @param site where its pathway is damaged; {@link SiteKey#NONE} when nothing on it is, or when it is not essential
 * @param beneath other rows, of those whose text nobody here has opened, on which its reading stands: its scales, and the
 *     conditions that explain it
 */
public record KeyLine(
        Item item,
        String name,
        String label,
        String intimacy,
        boolean together,
        Necessity necessity,
        Showing showing,
        List<String> questions,
        ReadingKey reading,
        List<Form> forms,
        List<PublishedSet> published,
        SiteKey site,
        MeansKey means,
        Origin origin,
        List<Origin> beneath) {
    public KeyLine {
        beneath = List.copyOf(beneath);
        questions = List.copyOf(questions);
        forms = List.copyOf(forms);
        published = List.copyOf(published);
    }

    /** What a convention says of it. */
    public Form form(String convention) {
        return forms.stream()
                .filter(form -> form.convention().equals(convention))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("the key holds no form of the convention \"" + convention
                                + "\" for " + item + ": expected one of "
                                + forms.stream().map(Form::convention).toList()));
    }

    /** Every row on which its reading stands. */
    public List<Origin> behind() {
        return behind(origin);
    }

    /** Every row on which something said of its reading stands, whose own row is this. */
    public List<Origin> behind(Origin own) {
        return Stream.concat(Stream.of(origin, own), beneath.stream())
                .distinct()
                .toList();
    }

    /** Every row on which anything said of it stands, under any convention. */
    Stream<Origin> everythingBehind() {
        return Stream.of(
                        Stream.of(origin, means.origin()),
                        beneath.stream(),
                        forms.stream().flatMap(form -> Stream.of(form.normalOrigin(), form.rootsOrigin())))
                .flatMap(one -> one);
    }

    public boolean asks(String question) {
        return questions.contains(question);
    }

    /** The same with another decision on whether the case turns on it. */
    public KeyLine with(Necessity other) {
        return made(other, reading, forms, site, means);
    }

    public KeyLine with(ReadingKey other) {
        return made(necessity, other, forms, site, means);
    }

    public KeyLine with(SiteKey other) {
        return made(necessity, reading, forms, other, means);
    }

    public KeyLine with(MeansKey other) {
        return made(necessity, reading, forms, site, other);
    }

    public KeyLine withForms(List<Form> others) {
        return made(necessity, reading, others, site, means);
    }

    /** The same standing on other rows too. */
    public KeyLine onto(List<Origin> others) {
        return new KeyLine(
                item, name, label, intimacy, together, necessity, showing, questions, reading, forms, published, site,
                means, origin, others);
    }

    private KeyLine made(Necessity needed, ReadingKey reads, List<Form> taught, SiteKey where, MeansKey meant) {
        return new KeyLine(
                item, name, label, intimacy, together, needed, showing, questions, reads, taught, published, where,
                meant, origin, beneath);
    }

    /** Whether the case turns on an item, and why. */
    public record Necessity(boolean essential, String reason) {}

    /** A root set that is in print, with its source. */
    public record PublishedSet(SegmentSet roots, Origin origin) {}
}
