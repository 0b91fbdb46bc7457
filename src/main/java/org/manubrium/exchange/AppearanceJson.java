package org.manubrium.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import org.manubrium.appearance.Appearance;

/** An appearance as JSON: always the same keys in the same order, so that only its numbers and words can differ. */
public final class AppearanceJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private AppearanceJson() {}

    public static String write(Appearance appearance) {
        try {
            return MAPPER.writeValueAsString(appearance);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an appearance is made of lists, numbers and words", e);
        }
    }
}
