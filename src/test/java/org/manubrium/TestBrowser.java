package org.manubrium;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A client that keeps cookies, sends the CSRF token with what it posts, and does not follow redirects. */
public final class TestBrowser {
    private static final Pattern CSRF = Pattern.compile("name=\"csrf\" content=\"([^\"]+)\"");
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Function<String, URI> address;
    private final CookieManager jar;
    private final HttpClient client;
    private String token = "";
    private List<String> tokenFor = List.of();

    TestBrowser(TestServer server) {
        this(server::address, new CookieManager());
    }

    private TestBrowser(Function<String, URI> address, CookieManager jar) {
        this.address = address;
        this.jar = jar;
        this.client = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .cookieHandler(jar)
                .build();
    }

    /** The same cookies at another server. */
    public TestBrowser at(TestServer other) {
        return new TestBrowser(other::address, jar);
    }

    /** A browser that nobody has used, at a server of another process. */
    public static TestBrowser at(URI base) {
        return new TestBrowser(base::resolve, new CookieManager());
    }

    /** The same cookies at a server of another process. */
    public TestBrowser movedTo(URI base) {
        return new TestBrowser(base::resolve, jar);
    }

    /** Asks for a page, as a person's browser does. */
    public HttpResponse<String> page(String path) {
        return send(request(path).header("Accept", "text/html"));
    }

    /** Asks as a program does. */
    public HttpResponse<String> json(String path) {
        return send(request(path).header("Accept", "application/json"));
    }

    /** Posts a form with its token. */
    public HttpResponse<String> post(String path, Map<String, String> fields) {
        return send(form(path, fields).header("X-CSRF-Token", csrf()));
    }

    /** Posts JSON with the token in the header. */
    public HttpResponse<String> postJson(String path, String body) {
        return send(request(path)
                .header("Accept", "application/json")
                .header("Content-Type", "application/json")
                .header("X-CSRF-Token", csrf())
                .POST(BodyPublishers.ofString(body)));
    }

    /** A form's request without a token. */
    public HttpRequest.Builder form(String path, Map<String, String> fields) {
        return request(path)
                .header("Accept", "text/html")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(encoded(fields)));
    }

    public HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(address.apply(path)).timeout(PATIENCE);
    }

    public HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** What this browser's forms send back now; the same as long as its cookies are the same. */
    public String csrf() {
        if (token.isEmpty() || !written().equals(tokenFor)) {
            token = askForToken();
            tokenFor = written();
        }
        return token;
    }

    /** The cookies with their values: two of one name are equal to {@link HttpCookie#equals}. */
    private List<String> written() {
        return cookies().stream().map(HttpCookie::toString).toList();
    }

    private String askForToken() {
        Matcher meta = CSRF.matcher(page("/sign-in").body());
        if (!meta.find()) {
            throw new AssertionError("the sign-in page holds no token");
        }
        return meta.group(1);
    }

    public List<HttpCookie> cookies() {
        return jar.getCookieStore().getCookies();
    }

    private static String encoded(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(field -> encode(field.getKey()) + '=' + encode(field.getValue()))
                .collect(Collectors.joining("&"));
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
