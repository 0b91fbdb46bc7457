package org.manubrium.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.manubrium.tables.Reference;
import org.manubrium.tables.Source;

/** A command that lists one part of the vocabulary, each entry with its sources and its confidence. */
final class Vocabulary implements Command {
    private final String name;
    private final String help;
    private final Supplier<Reference> reference;
    private final Function<Vocabulary.Cited, ArrayNode> list;

    Vocabulary(String name, String help, Supplier<Reference> reference, Function<Vocabulary.Cited, ArrayNode> list) {
        this.name = name;
        this.help = help;
        this.reference = reference;
        this.list = list;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String help() {
        return help;
    }

    @Override
    public ExitCode run(Arguments arguments, Console console) {
        if (!arguments.operands().isEmpty()) {
            throw new UsageException(name + " takes nothing after it, found \""
                    + arguments.operands().get(0) + "\"");
        }
        Json.print(console.out(), list.apply(new Cited(reference.get())));
        return ExitCode.DONE;
    }

    /** The reference with its sources at hand. */
    static final class Cited {
        private final Reference reference;
        private final Map<String, Source> sources;

        Cited(Reference reference) {
            this.reference = reference;
            this.sources = reference.sources().stream().collect(Collectors.toMap(Source::id, Function.identity()));
        }

        /** The citations behind "id;id", as one line. */
        String citations(String ids) {
            return Stream.of(ids.split(";", -1))
                    .map(String::trim)
                    .map(id -> Optional.ofNullable(sources.get(id))
                            .map(Source::citation)
                            .orElse(id))
                    .collect(Collectors.joining("; "));
        }

        Reference reference() {
            return reference;
        }

        /** Adds the citations behind "id;id" and how sure they make the row. */
        ObjectNode cite(ObjectNode entry, String ids, String confidence) {
            ArrayNode cited = entry.putArray("sources");
            List.of(ids.split(";", -1))
                    .forEach(id -> Optional.ofNullable(sources.get(id.trim()))
                            .ifPresent(source -> cited.addObject()
                                    .put("id", source.id())
                                    .put("citation", source.citation())
                                    .put("standing", source.standing())));
            return entry.put("confidence", confidence);
        }
    }
}
