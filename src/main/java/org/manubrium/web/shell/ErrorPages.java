package org.manubrium.web.shell;

import com.fasterxml.jackson.core.JacksonException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.UUID;
import org.manubrium.exchange.BadRecord;
import org.manubrium.school.account.Refused;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Says what went wrong: a page for people, {@code {status, error, detail}} for programs. What nobody foresaw is logged
 * under a number; the answer holds that number and nothing else of it.
 */
final class ErrorPages {
    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);
    private static final Map<Integer, String> SENTENCES = Map.of(
            400, "The server could not read what was sent.",
            401, "Sign in first.",
            403, "Your account may not do this.",
            404, "There is no page at this address.",
            405, "This address does not take that kind of request.",
            413, RequestSize.TOO_LARGE);

    private final View view;

    ErrorPages(View view) {
        this.view = view;
    }

    void into(RoutesConfig routes) {
        routes.exception(HttpResponseException.class, (e, answer) -> expected(answer, e));
        routes.exception(JacksonException.class, (e, answer) -> say(answer, 400, "The JSON could not be read."));
        routes.exception(BadRecord.class, (e, answer) -> say(answer, 400, e.getMessage() + "."));
        routes.exception(Refused.class, (e, answer) -> say(answer, 422, e.sentence()));
        routes.exception(Exception.class, (e, answer) -> unforeseen(answer, e));
    }

    /** For an Error, which passes every exception handler by. */
    static void lastResort(HttpServletResponse answer, Error error) {
        LOG.error("error", error);
        try {
            answer.setStatus(500);
            answer.setContentType("application/json");
            answer.getOutputStream()
                    .write("{\"status\":500,\"error\":\"Server Error\",\"detail\":\"\"}"
                            .getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            LOG.debug("the other side has gone", e);
        }
    }

    private void expected(Context answer, HttpResponseException e) {
        int status = e.getStatus();
        String methods = e.getDetails().get("availableMethods");
        if (status == 405 && methods != null) {
            answer.header("Allow", methods);
        }
        say(answer, status, hasSentence(e) ? String.valueOf(e.getMessage()) : SENTENCES.getOrDefault(status, ""));
    }

    /** Javalin's own messages are titles ("Not Found", "Endpoint GET /x not found"); ours are sentences. */
    private static boolean hasSentence(HttpResponseException e) {
        String message = String.valueOf(e.getMessage());
        return message.endsWith(".") || !SENTENCES.containsKey(e.getStatus());
    }

    private void unforeseen(Context answer, Exception e) {
        if (isTooLarge(e)) {
            say(answer, 413, RequestSize.TOO_LARGE);
            return;
        }
        String number = UUID.randomUUID().toString();
        LOG.error("request failed, number {}", number, e);
        say(answer, 500, "Something went wrong on the server. If it happens again, report number " + number + ".");
    }

    /** Jetty reports an oversized part, and a body longer than it said, in exceptions of its own. */
    private static boolean isTooLarge(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            String message = String.valueOf(cause.getMessage());
            if (message.contains("max length exceeded") || message.contains("exceeds max")) {
                return true;
            }
        }
        return false;
    }

    private void say(Context answer, int status, String detail) {
        Fault fault = new Fault(status, HttpStatus.forStatus(status).getMessage(), detail);
        answer.status(status);
        if (Wants.page(answer)) {
            page(answer, fault);
        } else {
            answer.json(fault);
        }
    }

    private void page(Context answer, Fault fault) {
        try {
            view.show(answer, "error", Map.of("error", fault.error(), "detail", fault.detail()));
        } catch (RuntimeException e) {
            LOG.error("the error page itself failed", e);
            answer.result(fault.status() + " " + fault.error());
        }
    }

    /** What a program is told. */
    private record Fault(int status, String error, String detail) {}
}
