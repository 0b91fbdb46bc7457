package org.manubrium.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;

/** Writes JSON, in UTF-8 whatever the terminal takes for its own. */
final class Json {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Json() {}

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    static ArrayNode array() {
        return MAPPER.createArrayNode();
    }

    /** To four places. */
    static double rounded(double number) {
        return Math.rint(number * 1e4) / 1e4;
    }

    static ArrayNode texts(Collection<String> texts) {
        ArrayNode array = array();
        texts.forEach(array::add);
        return array;
    }

    static void print(PrintStream out, JsonNode node) {
        try {
            out.writeBytes(MAPPER.writerWithDefaultPrettyPrinter()
                    .writeValueAsString(node)
                    .concat("\n")
                    .getBytes(StandardCharsets.UTF_8));
            out.flush();
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of JSON can always be written", e);
        }
    }
}
