package org.manubrium.exchange;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.ReadingKey;

/** Compiled keys as JSON, for the store. */
public final class KeyJson {
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .addMixIn(ReadingKey.class, OfKind.class)
            .build();

    private KeyJson() {}

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
            return JSON.readValue(json, CompiledKey.class);
        } catch (JsonProcessingException e) {
            throw new BadRecord("key", "a compiled key", e.getOriginalMessage());
        }
    }
}
