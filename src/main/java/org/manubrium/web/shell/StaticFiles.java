package org.manubrium.web.shell;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Files of {@code static/} on the class path under {@code /static/}, each read once. The tag is the hash of the content:
 * a browser asks again, and is told in a few bytes that nothing has changed.
 */
public final class StaticFiles {
    private static final String FOLDER = "static/";
    private static final Map<String, String> TYPES = Map.of(
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml",
            "png", "image/png",
            "woff2", "font/woff2",
            "txt", "text/plain; charset=utf-8",
            "json", "application/json");
    private static final String ASK_AGAIN = "public, no-cache";
    private static final String A_MONTH = "public, max-age=2592000";

    private final Map<String, StaticFile> files = new ConcurrentHashMap<>();

    /** Answers {@code /static/<path>}. */
    public void serve(Context answer) {
        StaticFile file = file(answer.pathParam("path")).orElseThrow(NotFoundResponse::new);
        answer.header("ETag", file.tag());
        answer.header("Cache-Control", file.type().startsWith("font/") ? A_MONTH : ASK_AGAIN);
        if (file.tag().equals(answer.header("If-None-Match"))) {
            answer.status(HttpStatus.NOT_MODIFIED);
        } else {
            answer.contentType(file.type()).result(file.content());
        }
    }

    private Optional<StaticFile> file(String path) {
        int dot = path.lastIndexOf('.');
        String type = dot < 0 ? null : TYPES.get(path.substring(dot + 1));
        if (type == null || path.contains("..")) {
            return Optional.empty();
        }
        return Optional.ofNullable(files.get(path)).or(() -> read(path, type));
    }

    private Optional<StaticFile> read(String path, String type) {
        try (InputStream stream = StaticFiles.class.getClassLoader().getResourceAsStream(FOLDER + path)) {
            if (stream == null) {
                return Optional.empty();
            }
            StaticFile file = StaticFile.of(type, stream.readAllBytes());
            files.put(path, file);
            return Optional.of(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
