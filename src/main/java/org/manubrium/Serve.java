package org.manubrium;

import java.net.BindException;
import java.util.List;
import java.util.Map;
import org.manubrium.cli.Arguments;
import org.manubrium.cli.Command;
import org.manubrium.cli.Console;
import org.manubrium.cli.ExitCode;
import org.manubrium.cli.Option;
import org.manubrium.cli.UsageException;
import org.manubrium.school.DemoSchool;

/** {@code serve}: the web server, until it is told to stop. */
final class Serve implements Command {
    private final DemoSchool demoSchool;
    private final Map<String, String> environment;

    Serve(DemoSchool demoSchool, Map<String, String> environment) {
        this.demoSchool = demoSchool;
        this.environment = Map.copyOf(environment);
    }

    @Override
    public String name() {
        return "serve";
    }

    @Override
    public String help() {
        return "Starts the web server. Each option may be set as MANUBRIUM_OPTION in the environment instead.";
    }

    @Override
    public List<Option> options() {
        return Settings.OPTIONS;
    }

    @Override
    public ExitCode run(Arguments arguments, Console console) {
        if (!arguments.operands().isEmpty()) {
            throw new UsageException(
                    "serve takes options only, not " + arguments.operands().get(0));
        }
        Settings settings = Settings.read(arguments, environment);
        try (Application application = Application.start(settings, demoSchool)) {
            Thread stop = new Thread(application::close, "stop");
            Runtime.getRuntime().addShutdownHook(stop);
            announce(application, settings, console);
            application.server().awaitStop();
            return ExitCode.DONE;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return ExitCode.DONE;
        } catch (RuntimeException e) {
            console.err().println("The server could not start: " + reason(e));
            return ExitCode.PROBLEMS;
        }
    }

    private static void announce(Application application, Settings settings, Console console) {
        console.err().println("Manubrium listens on " + application.address());
        console.err().println("Metrics are on http://127.0.0.1:" + application.metricsPort() + "/metrics");
        if (settings.demo()) {
            console.err().println("This is the demo: its database is gone when the server stops.");
        } else {
            console.err()
                    .println("The database is "
                            + settings.url()
                                    .map(Serve::withoutSecrets)
                                    .orElse(settings.data().toAbsolutePath().toString()));
        }
        application
                .firstEducatorLink()
                .ifPresent(link -> console.err()
                        .println("Nobody has an account yet. Make the first educator's, once, within 24 hours:\n  "
                                + link));
    }

    /** A JDBC address may carry a password behind the question mark or semicolon. */
    private static String withoutSecrets(String url) {
        return url.replaceFirst("[?;].*", "");
    }

    private static String reason(Throwable e) {
        Throwable cause = e;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        if (cause instanceof BindException) {
            return String.valueOf(e.getMessage()); // which names the port
        }
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }
}
