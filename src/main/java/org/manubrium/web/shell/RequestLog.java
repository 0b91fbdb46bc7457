package org.manubrium.web.shell;

import io.javalin.http.Context;
import io.javalin.router.Endpoint;
import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Times every request. Neither the log nor the timer holds an address, a name, an id or a query: only route patterns. */
final class RequestLog {
    private static final Logger LOG = LoggerFactory.getLogger("access");

    private final Metrics metrics;
    private final boolean logging;

    RequestLog(Metrics metrics, boolean logging) {
        this.metrics = metrics;
        this.logging = logging;
    }

    /** Notes a request that took so many milliseconds. */
    void note(Context request, float milliseconds) {
        String method = request.method().name();
        String route = route(request);
        int status = request.statusCode();
        metrics.request(method, route, status, Duration.ofNanos((long) (milliseconds * 1e6)));
        if (logging) {
            LOG.info("{} {} {} {} ms", method, route, status, Math.round(milliseconds));
        }
    }

    private static String route(Context request) {
        Endpoint matched = request.endpoints().matchedHttpEndpoint();
        return matched == null ? "unmatched" : matched.path;
    }
}
