package org.manubrium.web.shell;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Duration;

/** What the server measures about itself, in Prometheus's form, on a port of the loopback that no visitor reaches. */
public final class Metrics implements AutoCloseable {
    private final PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final JvmGcMetrics collections = new JvmGcMetrics();
    private final HttpServer server;

    private Metrics(HttpServer server) {
        this.server = server;
    }

    /**
     * Opens the port; 0 takes a free one.
     *
     * @throws UncheckedIOException if the port is taken
     */
    public static Metrics open(int port) {
        try {
            InetSocketAddress address = new InetSocketAddress(InetAddress.getLoopbackAddress(), port);
            Metrics metrics = new Metrics(HttpServer.create(address, 0));
            metrics.start();
            return metrics;
        } catch (IOException e) {
            throw new UncheckedIOException("The metrics port " + port + " cannot be opened: " + e.getMessage(), e);
        }
    }

    /** For a pool or another part to report to. */
    public Object registry() {
        return registry;
    }

    public int port() {
        return server.getAddress().getPort();
    }

    void request(String method, String route, int status, Duration taken) {
        Timer.builder("http.server.requests")
                .description("Requests by route pattern")
                .tags("method", method, "route", route, "status", String.valueOf(status))
                .register(registry)
                .record(taken);
    }

    @Override
    public void close() {
        server.stop(0);
        collections.close();
        registry.close();
    }

    private void start() {
        new JvmMemoryMetrics().bindTo(registry);
        new JvmThreadMetrics().bindTo(registry);
        new ProcessorMetrics().bindTo(registry);
        collections.bindTo(registry);
        server.createContext("/metrics", this::scrape);
        server.start();
    }

    private void scrape(HttpExchange exchange) throws IOException {
        byte[] text = registry.scrape().getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders().set("Content-Type", "text/plain; version=0.0.4; charset=utf-8");
        exchange.sendResponseHeaders(200, text.length);
        exchange.getResponseBody().write(text);
        exchange.close();
    }
}
