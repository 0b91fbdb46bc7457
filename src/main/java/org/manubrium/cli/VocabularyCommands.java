package org.manubrium.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.manubrium.anatomy.Region;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.SiteName;
import org.manubrium.anatomy.Structure;
import org.manubrium.cli.Vocabulary.Cited;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Condition;
import org.manubrium.tables.Reference;

/** {@code manoeuvres}, {@code conditions} and {@code sites}: the words that a case file may use. */
public final class VocabularyCommands {
    private VocabularyCommands() {}

    public static List<Command> all(Supplier<Reference> reference) {
        return List.of(
                new Vocabulary(
                        "manoeuvres",
                        "List what can be examined, with sources",
                        reference,
                        VocabularyCommands::manoeuvres),
                new Vocabulary(
                        "conditions",
                        "List what can ail a patient, with sources",
                        reference,
                        VocabularyCommands::conditions),
                new Vocabulary(
                        "sites", "List where a lesion can lie, with sources", reference, VocabularyCommands::sites));
    }

    private static ArrayNode manoeuvres(Cited cited) {
        ArrayNode array = Json.array();
        cited.reference().examination().manoeuvres().forEach(m -> array.add(manoeuvre(cited, m)));
        return array;
    }

    private static ObjectNode manoeuvre(Cited cited, Manoeuvre m) {
        ObjectNode entry = Json.object()
                .put("id", m.id())
                .put("name", m.name())
                .put("system", m.system())
                .put("sided", m.sided())
                .put("kind", m.kind().name().toLowerCase(Locale.ROOT))
                .put("scale", m.scale())
                .put("unit", m.unit())
                .put("seconds", m.seconds())
                .put("technique", m.technique());
        entry.set("positions", Json.texts(m.positions()));
        ArrayNode places = entry.putArray("places");
        m.places().forEach(place -> places.addObject().put("id", place.id()).put("name", place.name()));
        return cited.cite(entry, m.source(), m.confidence());
    }

    private static ArrayNode conditions(Cited cited) {
        ArrayNode array = Json.array();
        cited.reference().conditions().all().forEach(c -> array.add(condition(cited, c)));
        return array;
    }

    private static ObjectNode condition(Cited cited, Condition c) {
        ObjectNode entry = Json.object()
                .put("id", c.id())
                .put("name", c.name())
                .put("sided", c.sided())
                .put("onset", c.onset())
                .put("old", c.old())
                .put("history", c.history())
                .put("prior", c.prior())
                .put("leastSeverity", c.leastSeverity());
        entry.set("levels", Json.texts(c.levels()));
        ArrayNode effects = entry.putArray("effects");
        c.effects().forEach(effect -> {
            ObjectNode one = effects.addObject();
            one.put(effect.quantity().isEmpty() ? "site" : "quantity", effect.site() + effect.quantity());
            cited.cite(one.put("amount", effect.amount()), effect.source(), effect.confidence());
        });
        return cited.cite(entry, c.source(), c.confidence());
    }

    private static ArrayNode sites(Cited cited) {
        ArrayNode array = Json.array();
        cited.reference().anatomy().tables().structures().forEach(s -> array.add(structure(cited, s)));
        cited.reference().anatomy().tables().regions().forEach(r -> array.add(region(cited, r)));
        cited.reference().anatomy().tables().siteNames().forEach(n -> array.add(otherName(cited, n)));
        return array;
    }

    /** What is said in other words; the segments are those meant when none are said. */
    private static ObjectNode otherName(Cited cited, SiteName n) {
        ObjectNode entry = Json.object()
                .put("site", n.said())
                .put("means", n.meant() + n.level().map(level -> " at " + level).orElse(""));
        entry.set(
                "segments", Json.texts(n.segments().stream().map(Segment::name).toList()));
        return cited.cite(entry, n.source(), n.confidence());
    }

    private static ObjectNode structure(Cited cited, Structure s) {
        ObjectNode entry = Json.object()
                .put("site", s.name())
                .put("segments", s.segments())
                .put("sided", s.sided())
                .put("division", s.division());
        entry.set("levels", Json.texts(s.levels()));
        return cited.cite(entry, s.source(), s.confidence());
    }

    /** A region stands for the structures that lie in it, each with its share of the loss. */
    private static ObjectNode region(Cited cited, Region r) {
        ObjectNode entry = Json.object()
                .put("site", (r.name() + " " + r.extent()).trim())
                .put("segments", r.segments())
                .put("sided", r.sided());
        ArrayNode parts = entry.putArray("parts");
        r.parts()
                .forEach(part -> parts.add(cited.cite(
                        Json.object()
                                .put("structure", part.structure())
                                .put("side", part.side().name().toLowerCase(Locale.ROOT))
                                .put("level", part.level())
                                .put("share", part.share()),
                        part.source(),
                        part.confidence())));
        return entry;
    }
}
