package org.manubrium.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.CharacterCodingException;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.manubrium.casefile.CaseFile;
import org.manubrium.casefile.CaseKeys;
import org.manubrium.casefile.CaseReading;
import org.manubrium.exchange.BadRecord;
import org.manubrium.exchange.SheetJson;
import org.manubrium.marking.Checked;
import org.manubrium.marking.Marker;
import org.manubrium.marking.Measured;
import org.manubrium.marking.event.Logged;
import org.manubrium.tables.Reference;

/** {@code mark FILE ATTEMPT}: the mark sheet of an attempt at the patient in a case file. */
public final class MarkCommand implements Command {
    private static final Option CONVENTION =
            new Option("convention", "NAME", "the teaching convention in force", "the first one tabled");

    private static final Option STATION =
            Option.onOff("station", "Mark as a station: lines that stand on facts from memory do not score.");
    private static final Option CONFIRMED = new Option(
            "confirmed",
            "ROW,ROW",
            "rows of the tables, as the sheet names them, that score in a station all the same",
            "");

    private final Supplier<Reference> reference;

    public MarkCommand(Supplier<Reference> reference) {
        this.reference = reference;
    }

    @Override
    public String name() {
        return "mark";
    }

    @Override
    public String help() {
        return "Mark an attempt, given as JSON or YAML events, at a case file";
    }

    @Override
    public String operands() {
        return "FILE ATTEMPT";
    }

    @Override
    public List<Option> options() {
        return List.of(CONVENTION, STATION, CONFIRMED);
    }

    @Override
    public ExitCode run(Arguments arguments, Console console) {
        if (arguments.operands().size() != 2) {
            throw new UsageException("mark needs a FILE and an ATTEMPT after it");
        }
        Reference known = reference.get();
        String convention = convention(arguments, known);
        CaseReading reading = CaseTexts.read(arguments.operands().get(0), known);
        if (reading.caseFile().isEmpty()) {
            reading.problems().forEach(console.err()::println);
            return ExitCode.PROBLEMS;
        }
        return mark(
                known,
                reading.caseFile().get(),
                arguments.operands().get(1),
                new Rules(convention, checked(arguments)),
                console);
    }

    private record Rules(String convention, Checked checked) {}

    private static Checked checked(Arguments arguments) {
        List<String> rows = Arrays.stream(
                        arguments.operandOf(CONFIRMED).orElse("").split(",", -1))
                .map(String::trim)
                .filter(row -> !row.isEmpty())
                .toList();
        return new Checked(arguments.has(STATION), Set.copyOf(rows));
    }

    private static ExitCode mark(Reference known, CaseFile file, String attempt, Rules rules, Console console) {
        try {
            List<Logged> events = new AttemptText(known.examination()).read(CaseTexts.text(attempt));
            ObjectNode sheet = SheetJson.tree(new Marker(new CaseKeys(known).of(file))
                    .mark(rules.convention(), known.marking().weights(), rules.checked(), Measured.NOTHING, events));
            Vocabulary.Cited cited = new Vocabulary.Cited(known);
            spellOut(sheet.path("lines"), cited);
            spellOut(sheet.path("harms"), cited);
            Json.print(console.out(), sheet);
            return ExitCode.DONE;
        } catch (BadRecord e) {
            console.err().println(attempt + ": " + e.getMessage());
        } catch (CharacterCodingException e) {
            console.err().println(attempt + ": the file is not in UTF-8");
        } catch (CaseTexts.TooLarge e) {
            console.err().println(attempt + ": the file is too large: " + e.getMessage());
        }
        return ExitCode.PROBLEMS;
    }

    /** A reader of the sheet has no table of sources at hand. */
    private static void spellOut(JsonNode entries, Vocabulary.Cited cited) {
        entries.forEach(entry -> {
            if (entry instanceof ObjectNode line) {
                line.put("source", cited.citations(line.path("source").asText()));
            }
        });
    }

    private static String convention(Arguments arguments, Reference known) {
        List<String> ids = known.marking().conventions().ids();
        String named = arguments.operandOf(CONVENTION).orElse(ids.get(0));
        if (!ids.contains(named)) {
            throw new UsageException(
                    "no teaching convention is called \"" + named + "\": expected one of " + String.join(", ", ids));
        }
        return named;
    }
}
