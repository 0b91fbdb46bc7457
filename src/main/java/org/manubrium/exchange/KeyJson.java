package org.manubrium.exchange;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.deser.std.StringDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.ReadingKey;

/** Compiled keys as JSON, for the store. */
public final class KeyJson {
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .addMixIn(ReadingKey.class, OfKind.class)
            .addModule(new SimpleModule().addDeserializer(String.class, new Once()))
            .build();

    private KeyJson() {}

    /** A key says the same few words thousands of times, and other keys say them too: each is kept once. */
    private static final class Once extends StdScalarDeserializer<String> {
        private static final long serialVersionUID = 1L;

        Once() {
            super(String.class);
        }

        @Override
        public String deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            String text = StringDeserializer.instance.deserialize(parser, context);
            @SuppressWarnings("unchecked")
            Map<String, String> words = (Map<String, String>) context.getAttribute(Once.class);
            return words.computeIfAbsent(text, String::intern);
        }
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = ReadingKey.Graded.class, name = "graded"),
        @JsonSubTypes.Type(value = ReadingKey.Measured.class, name = "measured"),
        @JsonSubTypes.Type(value = ReadingKey.Chosen.class, name = "chosen")
    })
    private interface OfKind {}

    public static String write(CompiledKey key) {
        try {
            return JSON.writeValueAsString(key);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a compiled key can always be written", e);
        }
    }

    /** @throws BadRecord when it is no key */
    public static CompiledKey read(String json) {
        try {
            CompiledKey key = JSON.readerFor(CompiledKey.class)
                    .withAttribute(Once.class, new HashMap<String, String>())
                    .readValue(json);
            return Sharing.in(key);
        } catch (JsonProcessingException e) {
            throw new BadRecord("key", "a compiled key", e.getOriginalMessage());
        }
    }
}
