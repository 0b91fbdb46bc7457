package org.manubrium.web.shell;

import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The largest body taken. */
final class RequestSize {
    /** In bytes: 1 MiB, ten times a long case. */
    static final int LIMIT = 1 << 20;

    static final String TOO_LARGE = "That is too large: at most 1 MB can be sent at once.";

    // A browser that is still sending when the connection closes shows its own error and not ours, so that much is
    // swallowed first.
    private static final long SWALLOWED = 32L << 20;
    private static final int BUFFER = 1 << 16;

    private RequestSize() {}

    static void check(Context request) {
        if (request.req().getContentLengthLong() > LIMIT) {
            swallow(request);
            throw new ContentTooLargeResponse(TOO_LARGE);
        }
    }

    private static void swallow(Context request) {
        byte[] buffer = new byte[BUFFER];
        try (InputStream body = request.req().getInputStream()) {
            long left = SWALLOWED;
            int read = body.read(buffer);
            while (read > 0 && left > 0) {
                left -= read;
                read = body.read(buffer);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
