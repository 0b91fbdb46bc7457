package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.examination.Reading;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Sign;

/** Does a manoeuvre on a body: what it shows, and what is truly there. */
public final class Signs {
    private final Examination examination;
    private final Map<String, SignReader> byManoeuvre = new HashMap<>();
    private final Meanings meanings;

    public Signs(Examination examination, Collection<SignReader> readers, Meanings meanings) {
        this.examination = examination;
        this.meanings = meanings;
        Map<String, SignReader> byName = new HashMap<>();
        readers.forEach(reader -> byName.put(reader.name(), reader));
        examination
                .manoeuvres()
                .forEach(manoeuvre -> byManoeuvre.put(manoeuvre.id(), reader(byName, manoeuvre.reader(), manoeuvre)));
    }

    public Examination examination() {
        return examination;
    }

    public Meanings meanings() {
        return meanings;
    }

    /** What is truly there, without a word on what it means. */
    public Finding finding(Body body, Probe probe) {
        Manoeuvre manoeuvre = manoeuvre(probe.item());
        return found(reader(manoeuvre), body, manoeuvre, probe);
    }

    /** What a reader finds, read once in one body. */
    static Finding found(SignReader reader, Body body, Manoeuvre manoeuvre, Probe probe) {
        return body.once(probe, Finding.class, () -> reader.find(body, manoeuvre, probe));
    }

    /** What the examiner is given. */
    public Appearance show(Body body, Probe probe) {
        Manoeuvre manoeuvre = manoeuvre(probe.item());
        return reader(manoeuvre).show(body, manoeuvre, probe);
    }

    /** Every sign of a manoeuvre as it is usually done, right before left. */
    public List<Sign> examine(Body body, Manoeuvre manoeuvre) {
        return Examination.items(manoeuvre).stream()
                .map(item -> sign(body, usual(manoeuvre, item)))
                .toList();
    }

    /** Every sign of the body. */
    public List<Sign> examine(Body body) {
        List<Sign> found = new ArrayList<>();
        examination.manoeuvres().forEach(manoeuvre -> found.addAll(examine(body, manoeuvre)));
        return found;
    }

    /** The item done in the manoeuvre's usual position and way. */
    public static Probe usual(Manoeuvre manoeuvre, Item item) {
        return new Probe(item, manoeuvre.positions().get(0), Map.of());
    }

    /** What is truly there, how it reads on the manoeuvre's own scale, and what it means in this patient. */
    public Sign sign(Body body, Probe probe) {
        Manoeuvre manoeuvre = manoeuvre(probe.item());
        SignReader reader = reader(manoeuvre);
        Finding finding = found(reader, body, manoeuvre, probe);
        boolean normal = reader.normal(body, manoeuvre, probe, finding);
        return new Sign(
                probe.item(),
                probe.position(),
                finding,
                reading(manoeuvre, finding),
                Optional.of(normal),
                meanings.explain(body, manoeuvre, probe, reader, finding, normal));
    }

    /** A finding on the manoeuvre's own scale. */
    public Reading reading(Manoeuvre manoeuvre, Finding finding) {
        return reading(manoeuvre.scale(), finding);
    }

    /** A finding on a named scale of its quantity. */
    public Reading reading(String scale, Finding finding) {
        if (finding instanceof Finding.Graded graded) {
            return new Reading.Grade(
                    examination.scale(scale).grade(graded.amount()).code(), scale);
        }
        if (finding instanceof Finding.Measured measured) {
            return new Reading.Amount(measured.value(), measured.unit());
        }
        return new Reading.Seen(((Finding.Seen) finding).code());
    }

    /** The pathways that carry an item's sign. */
    public List<Strand> strands(Body body, Probe probe) {
        Manoeuvre manoeuvre = manoeuvre(probe.item());
        return reader(manoeuvre).strands(body, manoeuvre, probe);
    }

    /** The quantities on which an item's sign depends, by id. */
    public Set<String> quantities(Body body, Probe probe) {
        Manoeuvre manoeuvre = manoeuvre(probe.item());
        return reader(manoeuvre).quantities(body, manoeuvre, probe);
    }

    private Manoeuvre manoeuvre(Item item) {
        return examination
                .manoeuvre(item.manoeuvre())
                .orElseThrow(() -> new IllegalArgumentException("no manoeuvre is called " + item.manoeuvre()));
    }

    private SignReader reader(Manoeuvre manoeuvre) {
        return reader(byManoeuvre, manoeuvre.id(), manoeuvre);
    }

    private static SignReader reader(Map<String, SignReader> readers, String name, Manoeuvre manoeuvre) {
        SignReader reader = readers.get(name);
        if (reader == null) {
            throw new IllegalArgumentException(manoeuvre.id() + " reads \"" + manoeuvre.reads()
                    + "\", which no system reads: expected one of " + readers.keySet());
        }
        return reader;
    }
}
