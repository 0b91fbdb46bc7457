package org.manubrium.casefile;

import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Turns text into a tree of YAML nodes, within bounds. The stream of events is looked through first, which needs no memory,
 * so that a file made to grow without end is refused before the tree is built.
 */
final class Yaml {
    /** Characters; a long case has about 6,000. */
    static final int LONGEST = 100_000;

    /** Lists and mappings inside each other; a case has 4. */
    static final int DEEPEST = 10;

    private final LoadSettings settings =
            LoadSettings.builder().setCodePointLimit(LONGEST + 1).build();
    private final Problems problems;
    private int depth;
    private int documents;

    private Yaml(Problems problems) {
        this.problems = problems;
    }

    static Optional<Node> tree(String text, Problems problems) {
        if (text.length() > LONGEST) {
            problems.add(1, "too-large", "the file has " + text.length() + " characters: expected at most " + LONGEST);
            return Optional.empty();
        }
        try {
            return new Yaml(problems).bounded(text);
        } catch (MarkedYamlEngineException e) {
            problems.add(line(e.getProblemMark()), "yaml", "not readable as YAML: " + e.getProblem());
        } catch (YamlEngineException e) {
            problems.add(1, "yaml", "not readable as YAML: " + e.getMessage());
        }
        return Optional.empty();
    }

    private Optional<Node> bounded(String text) {
        for (Event event : new Parse(settings).parseString(text)) {
            if (refused(event)) {
                return Optional.empty();
            }
        }
        return new Compose(settings).composeString(text);
    }

    private boolean refused(Event event) {
        int line = line(event.getStartMark());
        if (event instanceof AliasEvent
                || (event instanceof NodeEvent node && node.getAnchor().isPresent())) {
            problems.add(line, "alias", "expected every part written out, found an anchor (&) or an alias (*)");
            return true;
        }
        if (event instanceof DocumentStartEvent && ++documents > 1) {
            problems.add(line, "yaml", "expected one document, found a second after \"---\"");
            return true;
        }
        depth += event.getEventId() == Event.ID.MappingEnd || event.getEventId() == Event.ID.SequenceEnd ? -1 : 0;
        if ((event instanceof MappingStartEvent || event instanceof SequenceStartEvent) && ++depth > DEEPEST) {
            problems.add(line, "too-deep", "expected at most " + DEEPEST + " lists and mappings inside each other");
            return true;
        }
        return false;
    }

    /** Lines are counted from 1. */
    static int line(Optional<Mark> mark) {
        return mark.map(Mark::getLine).orElse(0) + 1;
    }
}
