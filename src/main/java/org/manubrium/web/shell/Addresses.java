package org.manubrium.web.shell;

import io.javalin.http.Context;

/** Whole addresses of pages here, to be written down or sent to somebody. */
public final class Addresses {
    private final Origin origin;

    Addresses(Origin origin) {
        this.origin = origin;
    }

    /** The page as this visitor's browser reaches it. */
    public String of(Context request, String path) {
        return (origin.isSecure(request) ? "https://" : "http://") + request.host() + path;
    }
}
