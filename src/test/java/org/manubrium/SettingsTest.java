package org.manubrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.manubrium.cli.Arguments;
import org.manubrium.cli.Option;
import org.manubrium.cli.UsageException;

class SettingsTest {
    @Test
    void everyComponentHasItsOptionWithOneLineOfHelp() {
        List<String> components = Arrays.stream(Settings.class.getRecordComponents())
                .map(RecordComponent::getName)
                .map(name -> name.replaceAll("([A-Z])", "-$1").toLowerCase(java.util.Locale.ROOT))
                .toList();

        assertThat(Settings.OPTIONS).extracting(Option::name).isEqualTo(components);
        assertThat(Settings.OPTIONS)
                .allSatisfy(option ->
                        assertThat(option.help()).isNotBlank().endsWith(".").doesNotContain("\n"));
    }

    @Test
    void flagGoesBeforeEnvironmentAndEnvironmentBeforeDefault() {
        Map<String, String> environment = Map.of("MANUBRIUM_PORT", "9001", "MANUBRIUM_ACCESS_LOG", "true");

        assertThat(read(environment, "--port", "9002").port()).isEqualTo(9002);
        assertThat(read(environment).port()).isEqualTo(9001);
        assertThat(read(environment).accessLog()).isTrue();
        assertThat(read(Map.of()).port()).isEqualTo(8080);
    }

    @Test
    void withoutDirectionsTheDataAreInTheHomeFolder() {
        assertThat(read(Map.of()).data()).startsWithRaw(java.nio.file.Path.of(System.getProperty("user.home")));
    }

    @Test
    void numbersThatAreNoneAndPortsBeyondTheLastAreRefusedByName() {
        assertThatThrownBy(() -> read(Map.of(), "--port", "soon"))
                .isInstanceOf(UsageException.class)
                .hasMessageContaining("--port")
                .hasMessageContaining("soon");
        assertThatThrownBy(() -> read(Map.of(), "--port", "65536"))
                .isInstanceOf(UsageException.class)
                .hasMessageContaining("--port");
    }

    @Test
    void demoStaysOnTheLoopbackAndInItsOwnDatabase() {
        assertThatThrownBy(() -> read(Map.of(), "--demo", "--host", "0.0.0.0"))
                .isInstanceOf(UsageException.class)
                .hasMessageContaining("0.0.0.0");
        assertThatThrownBy(() -> read(Map.of(), "--demo", "--url", "jdbc:h2:mem:x"))
                .isInstanceOf(UsageException.class)
                .hasMessageContaining("--url");
    }

    @Test
    void databaseOfAnotherMakeIsRefused() {
        assertThatThrownBy(() -> read(Map.of(), "--url", "jdbc:other:x"))
                .isInstanceOf(UsageException.class)
                .hasMessageContaining("jdbc:postgresql");
    }

    private static Settings read(Map<String, String> environment, String... words) {
        return Settings.read(Arguments.parse(Settings.OPTIONS, List.of(words)), environment);
    }
}
