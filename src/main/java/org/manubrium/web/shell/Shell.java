package org.manubrium.web.shell;

import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import org.manubrium.school.account.Sessions;

/** Puts everything that all routes have in common around them. */
public final class Shell {
    private final ShellSettings settings;
    private final Metrics metrics;
    private final Origin origin;
    private final Cookies cookies;
    private final Visitors visitors;
    private final View view = new View();

    public Shell(ShellSettings settings, Sessions sessions, Metrics metrics) {
        this.settings = settings;
        this.metrics = metrics;
        this.origin = new Origin(settings);
        this.cookies = new Cookies(origin);
        this.visitors = new Visitors(sessions, cookies, origin);
    }

    public View view() {
        return view;
    }

    public Cookies cookies() {
        return cookies;
    }

    public Addresses addresses() {
        return new Addresses(origin);
    }

    /** Sets limits, headers, the gate, error pages and the log. */
    public void into(JavalinConfig config) {
        limits(config);
        SecurityHeaders headers = new SecurityHeaders(origin);
        Gate gate = new Gate();
        RequestLog log = new RequestLog(metrics, settings.accessLog());
        config.routes.before(request -> {
            headers.add(request);
            visitors.attach(request);
            RequestSize.check(request);
        });
        config.routes.beforeMatched(gate::check);
        new ErrorPages(view).into(config.routes);
        config.requestLogger.http(log::note);
    }

    private static void limits(JavalinConfig config) {
        config.http.maxRequestSize = RequestSize.LIMIT;
        config.http.prefer405over404 = true;
        config.http.generateEtags = false;
        config.jetty.multipartConfig.maxFileSize(RequestSize.LIMIT, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxTotalRequestSize(RequestSize.LIMIT, SizeUnit.BYTES);
        config.router.javaLangErrorHandler(ErrorPages::lastResort);
    }
}
