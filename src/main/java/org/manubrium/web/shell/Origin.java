package org.manubrium.web.shell;

import io.javalin.http.Context;

/** Where a request came from, believing a proxy's headers only if told to. */
final class Origin {
    private final ShellSettings settings;

    Origin(ShellSettings settings) {
        this.settings = settings;
    }

    /** The last address in X-Forwarded-For is the one the trusted proxy saw itself; those before it anyone can write. */
    String address(Context request) {
        String forwarded = request.header("X-Forwarded-For");
        return settings.trustProxy() && forwarded != null
                ? forwarded.substring(forwarded.lastIndexOf(',') + 1).strip()
                : request.ip();
    }

    boolean isSecure(Context request) {
        return settings.secure()
                || (settings.trustProxy() && "https".equalsIgnoreCase(request.header("X-Forwarded-Proto")));
    }
}
