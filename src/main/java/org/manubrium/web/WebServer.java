package org.manubrium.web;

import io.javalin.Javalin;
import io.javalin.router.Endpoint;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.manubrium.web.shell.Shell;

/** The listening server. */
public final class WebServer implements AutoCloseable {
    // Longer than any request takes, shorter than a service manager waits before it kills.
    private static final long STOP_TIMEOUT_MS = 8_000;

    private final Javalin javalin;
    private final CountDownLatch stopped = new CountDownLatch(1);

    private WebServer(Javalin javalin) {
        this.javalin = javalin;
    }

    /** Listens on host and port; port 0 takes a free one. */
    public static WebServer start(String host, int port, Shell shell, Routes routes) {
        Javalin javalin = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.startup.startupWatcherEnabled = false;
            config.jetty.modifyServer(server -> server.setStopTimeout(STOP_TIMEOUT_MS));
            config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
            shell.into(config);
            routes.into(config.routes);
        });
        return new WebServer(javalin.start(host, port));
    }

    public int port() {
        return javalin.port();
    }

    /** Every registered route, for those who want to walk them. */
    public List<Endpoint> endpoints() {
        return javalin.unsafe.internalRouter.allHttpHandlers().stream()
                .map(parsed -> parsed.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .toList();
    }

    /** Returns when the server has been closed. */
    public void awaitStop() throws InterruptedException {
        stopped.await();
    }

    /** Takes no new request, lets those under way finish, stops. */
    @Override
    public void close() {
        javalin.stop();
        stopped.countDown();
    }
}
