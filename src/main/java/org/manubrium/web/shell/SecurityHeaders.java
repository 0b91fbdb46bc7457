package org.manubrium.web.shell;

import io.javalin.http.Context;
import java.util.Map;

/** The headers that go out with every answer, whatever it is. */
final class SecurityHeaders {
    private static final String CONTENT_POLICY = String.join(
            "; ",
            "default-src 'none'",
            "script-src 'self'",
            "style-src 'self'",
            "img-src 'self' data:",
            "font-src 'self'",
            "connect-src 'self'",
            "form-action 'self'",
            "base-uri 'none'",
            "frame-ancestors 'none'");
    private static final Map<String, String> ALWAYS = Map.of(
            "Content-Security-Policy", CONTENT_POLICY,
            "X-Content-Type-Options", "nosniff",
            "X-Frame-Options", "DENY",
            "Referrer-Policy", "same-origin",
            "Cross-Origin-Opener-Policy", "same-origin",
            "Cross-Origin-Resource-Policy", "same-origin",
            "Permissions-Policy", "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
            "Cache-Control", "no-store");
    private static final String A_YEAR = "max-age=31536000";

    private final Origin origin;

    SecurityHeaders(Origin origin) {
        this.origin = origin;
    }

    void add(Context answer) {
        ALWAYS.forEach(answer::header);
        if (origin.isSecure(answer)) {
            answer.header("Strict-Transport-Security", A_YEAR);
        }
    }
}
