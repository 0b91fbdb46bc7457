package org.manubrium.patient.sign;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;
import org.manubrium.Chromium;
import org.manubrium.TestServer;
import org.manubrium.appearance.Appearance;

/** A browser that renders to memory what the page would sound, from what the server tells. */
final class Renderer implements AutoCloseable {
    private static final String RENDER = """
            const [module, builder, probe, seconds, rate] = arguments;
            const done = arguments[arguments.length - 1];
            import(module).then(async (made) => {
              const context = new OfflineAudioContext(1, seconds * rate, rate);
              made[builder](JSON.parse(probe))(context, context.destination, 0);
              const samples = (await context.startRendering()).getChannelData(0);
              let text = "";
              for (const byte of new Uint8Array(samples.buffer)) text += String.fromCharCode(byte);
              done(btoa(text));
            }).catch((problem) => done("!" + problem));
            """;

    private final TestServer server;
    private final Chromium chromium;

    Renderer() {
        server = TestServer.start();
        chromium = Chromium.open(1280, 900);
        chromium.driver().get(server.address("/sign-in").toString());
    }

    Sound render(String module, String builder, Appearance shown, double seconds) {
        try {
            String probe = new ObjectMapper().writeValueAsString(Map.of("shown", shown));
            Object answer = chromium.driver()
                    .executeAsyncScript(RENDER, "/static/signs/" + module, builder, probe, seconds, Sound.RATE);
            assertThat(answer).asString().doesNotStartWith("!");
            return Sound.decoded(String.valueOf(answer));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        chromium.close();
        server.close();
    }
}
