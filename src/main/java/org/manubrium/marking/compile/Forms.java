package org.manubrium.marking.compile;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.ReadingKind;
import org.manubrium.marking.convention.ConventionFact;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.marking.key.Form;
import org.manubrium.marking.key.KeyLine.PublishedSet;
import org.manubrium.marking.key.Origin;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Sign;
import org.manubrium.patient.sign.Signs;

/** What each convention says of an item: its scale, its limits of the normal, its roots. */
final class Forms {
    private static final String LOWEST = " lowest normal";
    private static final String HIGHEST = " highest normal";
    private static final String FALL = " abnormal fall";
    private static final String FALL_WHEN_HIGH = " abnormal fall when high";

    private final Conventions conventions;
    private final Signs signs;
    private final Look patient;
    private final Look healthy;
    private final Map<String, Origin> own = new HashMap<>();

    /** @param healthy the same person in health */
    Forms(Conventions conventions, Signs signs, Look patient, Look healthy) {
        this.conventions = conventions;
        this.signs = signs;
        this.patient = patient;
        this.healthy = healthy;
    }

    List<Form> of(Manoeuvre manoeuvre, Sign sign) {
        return conventions.ids().stream().map(id -> form(id, manoeuvre, sign)).toList();
    }

    /** The row of a manoeuvre, whose print is made once for its many items. */
    Origin own(Manoeuvre manoeuvre) {
        return own.computeIfAbsent(manoeuvre.id(), id -> Unopened.of(manoeuvre));
    }

    private Form form(String convention, Manoeuvre manoeuvre, Sign sign) {
        Origin own = own(manoeuvre);
        String scale = manoeuvre.kind() == ReadingKind.GRADED ? scale(convention, manoeuvre) : "";
        Limits limits = limits(convention, manoeuvre, sign, own);
        Optional<Conventions.Roots> roots =
                manoeuvre.questions().contains("roots") ? roots(convention, manoeuvre, sign.item()) : Optional.empty();
        return new Form(
                convention,
                scale,
                limits.normal,
                limits.least,
                limits.most,
                roots.map(Conventions.Roots::accepted).orElse(List.of()),
                limits.origin,
                roots.map(Unopened::of).orElse(own));
    }

    private String scale(String convention, Manoeuvre manoeuvre) {
        String quantity = signs.examination().scale(manoeuvre.scale()).quantity();
        return conventions.scale(convention, quantity).orElse(manoeuvre.scale());
    }

    private record Limits(boolean normal, double least, double most, Origin origin) {}

    /** The convention's limits where it has them and the sign is a number; otherwise the body's own judgement. */
    private Limits limits(String convention, Manoeuvre manoeuvre, Sign sign, Origin own) {
        if (!(sign.finding() instanceof Finding.Measured measured)) {
            return new Limits(sign.normal().orElse(true), Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, own);
        }
        Optional<ConventionFact> lowest = fact(convention, sign.item(), LOWEST);
        Optional<ConventionFact> highest = fact(convention, sign.item(), HIGHEST);
        Optional<ConventionFact> fall = fact(convention, sign.item(), FALL);
        double least = Math.max(
                lowest.map(Forms::limit).orElse(Double.NEGATIVE_INFINITY),
                fall.map(row -> leastAfterFall(convention, sign.item(), row)).orElse(Double.NEGATIVE_INFINITY));
        double most = highest.map(Forms::limit).orElse(Double.POSITIVE_INFINITY);
        Optional<ConventionFact> taught =
                Stream.of(highest, lowest, fall).flatMap(Optional::stream).findFirst();
        boolean normal = taught.isPresent()
                ? measured.value() >= least
                        && measured.value() <= most
                        && !strayed(
                                manoeuvre, sign, measured, lowest.isPresent() || fall.isPresent(), highest.isPresent())
                : sign.normal().orElse(true);
        return new Limits(normal, least, most, taught.map(Unopened::of).orElse(own));
    }

    /** Whether the number has strayed from health to the side of which the convention says nothing. */
    private boolean strayed(
            Manoeuvre manoeuvre, Sign sign, Finding.Measured measured, boolean lowTaught, boolean highTaught) {
        if (sign.normal().orElse(true) || !(healthy.usual(manoeuvre, sign.item()) instanceof Finding.Measured usual)) {
            return false;
        }
        return measured.value() < usual.value() ? !lowTaught : !highTaught;
    }

    private Optional<ConventionFact> fact(String convention, Item item, String what) {
        String at = item.manoeuvre() + (item.place().isEmpty() ? "" : "@" + item.place());
        return conventions.fact(convention, at + what);
    }

    /** The least that is normal when a fall of the threshold or more from another item's number is not. */
    private double leastAfterFall(String convention, Item item, ConventionFact fall) {
        double before = number(other(item, fall.form()));
        boolean high = fact(convention, item, FALL_WHEN_HIGH)
                .filter(row -> before >= number(row.form()))
                .isPresent();
        double threshold = high ? limit(fact(convention, item, FALL_WHEN_HIGH).orElseThrow()) : limit(fall);
        return Math.nextUp(before - threshold);
    }

    private static double number(String form) {
        return Double.parseDouble(form);
    }

    private double number(Item item) {
        Manoeuvre manoeuvre = signs.examination()
                .manoeuvre(item.manoeuvre())
                .orElseThrow(() -> new IllegalArgumentException("no manoeuvre is called " + item.manoeuvre()));
        return ((Finding.Measured) patient.usual(manoeuvre, item)).value();
    }

    /** The item named "manoeuvre@place", on the same side. */
    private static Item other(Item item, String named) {
        int at = named.indexOf('@');
        String manoeuvre = at < 0 ? named : named.substring(0, at);
        return new Item(manoeuvre, item.side(), at < 0 ? "" : named.substring(at + 1));
    }

    private static double limit(ConventionFact row) {
        return row.threshold()
                .orElseThrow(() -> new IllegalArgumentException(
                        row.convention() + " names no threshold for \"" + row.fact() + "\""));
    }

    private Optional<Conventions.Roots> roots(String convention, Manoeuvre manoeuvre, Item item) {
        return owners(manoeuvre, item)
                .flatMap(owner -> conventions.roots(convention, owner).stream())
                .findFirst();
    }

    /** Every root set in print for what an item reads. */
    List<PublishedSet> published(Manoeuvre manoeuvre, Item item) {
        return owners(manoeuvre, item)
                .flatMap(owner -> conventions.published(owner).stream())
                .map(p -> new PublishedSet(p.roots(), Unopened.of(p)))
                .toList();
    }

    /** What the roots of an item are tabled under: its point of the skin, or the manoeuvre. */
    private static Stream<String> owners(Manoeuvre manoeuvre, Item item) {
        return item.place().isEmpty() ? Stream.of(manoeuvre.id(), manoeuvre.part()) : Stream.of(item.place());
    }
}
