package org.manubrium;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.cli.Arguments;
import org.manubrium.cli.Option;
import org.manubrium.cli.UsageException;

/**
 * How the server runs. Each component has the option of the same name, and the environment variable
 * {@code MANUBRIUM_<NAME>}; a flag goes before the environment. Help for each is in {@link #OPTIONS}.
 */
record Settings(
        boolean demo,
        Path data,
        Optional<String> url,
        String host,
        int port,
        int metricsPort,
        int poolSize,
        boolean accessLog,
        boolean secure,
        boolean trustProxy) {
    private static final String LOOPBACK = "127.0.0.1";
    private static final int HIGHEST_PORT = 65_535;
    private static final int LARGEST_POOL = 200;

    private static final Option DEMO =
            Option.onOff("demo", "A demo school in a throw-away database, on the loopback, entered by a click.");
    private static final Option DATA = new Option("data", "DIR", "Folder of the embedded database.", "~/.manubrium");
    private static final Option URL =
            new Option("url", "JDBC", "Another database: jdbc:postgresql://… or jdbc:h2:…, instead of --data.", "");
    private static final Option HOST =
            new Option("host", "ADDRESS", "Address to listen on; 0.0.0.0 for all of this machine's.", LOOPBACK);
    private static final Option PORT = new Option("port", "N", "Port to listen on; 0 takes a free one.", "8080");
    private static final Option METRICS_PORT =
            new Option("metrics-port", "N", "Port of the loopback for Prometheus metrics; 0 takes a free one.", "9464");
    private static final Option POOL_SIZE = new Option("pool-size", "N", "Most connections to the database.", "10");
    private static final Option ACCESS_LOG = Option.onOff(
            "access-log", "Log method, route, status and milliseconds of every request, no personal data.");
    private static final Option SECURE =
            Option.onOff("secure", "Browsers come over TLS: mark cookies Secure, tell browsers to stay with TLS.");
    private static final Option TRUST_PROXY =
            Option.onOff("trust-proxy", "Believe X-Forwarded-For and X-Forwarded-Proto; only behind your own proxy.");

    /** One for each component, in its order. */
    static final List<Option> OPTIONS =
            List.of(DEMO, DATA, URL, HOST, PORT, METRICS_PORT, POOL_SIZE, ACCESS_LOG, SECURE, TRUST_PROXY);

    /**
     * Reads flags, then the environment, then what holds otherwise.
     *
     * @throws UsageException naming the setting that makes no sense
     */
    static Settings read(Arguments arguments, Map<String, String> environment) {
        Reader reader = new Reader(arguments, environment);
        Settings settings = new Settings(
                reader.isOn(DEMO),
                folder(reader.text(DATA)),
                Optional.of(reader.text(URL)).filter(url -> !url.isEmpty()),
                reader.text(HOST),
                reader.number(PORT, 0, HIGHEST_PORT),
                reader.number(METRICS_PORT, 0, HIGHEST_PORT),
                reader.number(POOL_SIZE, 1, LARGEST_POOL),
                reader.isOn(ACCESS_LOG),
                reader.isOn(SECURE),
                reader.isOn(TRUST_PROXY));
        settings.check();
        return settings;
    }

    private void check() {
        if (demo && !List.of(LOOPBACK, "localhost", "::1").contains(host)) {
            throw new UsageException(
                    "--demo lets anyone in by a click and listens on the loopback only, not on " + host);
        }
        if (demo && url.isPresent()) {
            throw new UsageException("--demo uses a throw-away database of its own, not --url");
        }
        url.filter(address -> !address.startsWith("jdbc:postgresql:") && !address.startsWith("jdbc:h2:"))
                .ifPresent(address -> {
                    throw new UsageException("--url takes jdbc:postgresql:… or jdbc:h2:…");
                });
    }

    private static Path folder(String text) {
        return text.startsWith("~/") ? Path.of(System.getProperty("user.home"), text.substring(2)) : Path.of(text);
    }

    private record Reader(Arguments arguments, Map<String, String> environment) {
        String text(Option option) {
            return arguments
                    .operandOf(option)
                    .or(() -> Optional.ofNullable(environment.get(option.variable())))
                    .orElse(option.fallback());
        }

        boolean isOn(Option option) {
            if (arguments.has(option)) {
                return true;
            }
            String word = environment.getOrDefault(option.variable(), "false");
            return switch (word) {
                case "true" -> true;
                case "false", "" -> false;
                default -> throw new UsageException(option.variable() + " is true or false, not " + word);
            };
        }

        int number(Option option, int least, int most) {
            String text = text(option);
            try {
                int number = Integer.parseInt(text);
                if (number >= least && number <= most) {
                    return number;
                }
            } catch (NumberFormatException e) {
                throw new UsageException(option.flag() + " takes a whole number, not " + text);
            }
            throw new UsageException(option.flag() + " lies between " + least + " and " + most + ", not at " + text);
        }
    }
}
