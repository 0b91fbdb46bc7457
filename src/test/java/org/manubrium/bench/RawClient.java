package org.manubrium.bench;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** The cheapest client there is, so that what is measured is the server: one connection, requests one after another. */
final class RawClient {
    private final Socket socket;
    private final InputStream in;

    RawClient(URI server) {
        try {
            socket = new Socket(server.getHost(), server.getPort());
            socket.setTcpNoDelay(true);
            in = new BufferedInputStream(socket.getInputStream(), 1 << 16);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] get(String path, String cookies, String accept) {
        return ("GET " + path + " HTTP/1.1\r\nHost: x\r\nAccept: " + accept + "\r\nCookie: " + cookies + "\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    static byte[] post(String path, String cookies, String csrf, String json) {
        byte[] body = json.getBytes(StandardCharsets.UTF_8);
        return ("POST " + path
                        + " HTTP/1.1\r\nHost: x\r\nAccept: application/json\r\nContent-Type: application/json\r\n"
                        + "X-CSRF-Token: " + csrf + "\r\nCookie: " + cookies + "\r\nContent-Length: " + body.length
                        + "\r\n\r\n" + json)
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Sends the request, reads the answer away, and insists on 200. */
    void send(byte[] request) {
        try {
            socket.getOutputStream().write(request);
            String status = line();
            if (!status.contains(" 200 ")) {
                throw new IllegalStateException(status);
            }
            int length = -1;
            boolean chunked = false;
            for (String header = line(); !header.isEmpty(); header = line()) {
                String low = header.toLowerCase(Locale.ROOT);
                length = low.startsWith("content-length:")
                        ? Integer.parseInt(low.substring(15).trim())
                        : length;
                chunked |= low.startsWith("transfer-encoding:") && low.contains("chunked");
            }
            if (chunked) {
                chunks();
            } else {
                in.skipNBytes(Math.max(0, length));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void chunks() throws IOException {
        for (int size = Integer.parseInt(line(), 16); size > 0; size = Integer.parseInt(line(), 16)) {
            in.skipNBytes(size + 2L);
        }
        line();
    }

    private String line() throws IOException {
        StringBuilder text = new StringBuilder();
        for (int c = in.read(); c != '\n'; c = in.read()) {
            if (c < 0) {
                throw new IOException("the server hung up");
            }
            if (c != '\r') {
                text.append((char) c);
            }
        }
        return text.toString();
    }
}
