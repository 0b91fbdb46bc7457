package org.manubrium.web.shell;

import io.javalin.http.Context;

/** What kind of answer a request asks for. */
public final class Wants {
    private Wants() {}

    /** Whether a person's browser asks for a page; everything else is answered in JSON. */
    public static boolean page(Context request) {
        String accept = request.header("Accept");
        return accept != null && accept.contains("text/html");
    }
}
