package org.manubrium.web.shell;

/**
 * How the server stands to the world.
 *
 * @param secure whether browsers reach it over TLS, whatever a proxy says
 * @param trustProxy whether X-Forwarded-For and X-Forwarded-Proto are a proxy's word and not a stranger's
 * @param accessLog whether each request is logged
 */
public record ShellSettings(boolean secure, boolean trustProxy, boolean accessLog) {}
