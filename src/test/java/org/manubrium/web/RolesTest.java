package org.manubrium.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import io.javalin.security.Roles;
import io.javalin.security.RouteRole;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.manubrium.TestBrowser;
import org.manubrium.TestServer;
import org.manubrium.security.Role;
import org.manubrium.web.shell.Access;

/** Walks every route of the running server, demo included, as everybody. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RolesTest {
    private static final int FEWEST_ROUTES = 12;
    private static final Set<Integer> REFUSALS = Set.of(401, 403);

    private final TestServer server = TestServer.demo();
    private List<Endpoint> routes = List.of();

    @BeforeAll
    void list() {
        routes = server.web().endpoints();
    }

    @AfterAll
    void close() {
        server.close();
    }

    @Test
    void everyRouteNamesWhoMayUseIt() {
        assertThat(routes).hasSizeGreaterThan(FEWEST_ROUTES);
        assertThat(routes)
                .allSatisfy(route -> assertThat(roles(route)).as(route.path).isNotEmpty());
    }

    @Test
    void anyoneElseIsAskedToSignIn() {
        for (Endpoint route : closed()) {
            TestBrowser nobody = server.browser();

            assertThat(ask(nobody, route, "application/json").statusCode())
                    .as(name(route))
                    .isEqualTo(401);
            HttpResponse<String> page = ask(nobody, route, "text/html");
            assertThat(page.statusCode()).as(name(route)).isEqualTo(303);
            assertThat(page.headers().firstValue("Location"))
                    .hasValueSatisfying(where -> assertThat(where).startsWith("/sign-in"));
        }
    }

    @Test
    void eachRoleMayUseItsOwnRoutesAndNoOthers() {
        for (Role role : Role.values()) {
            TestBrowser someone = server.signInAs(role);
            for (Endpoint route : closed()) {
                int status = ask(someone, route, "application/json").statusCode();
                if (roles(route).contains(Access.valueOf(role.name()))) {
                    assertThat(REFUSALS).as(role + " at " + name(route)).doesNotContain(status);
                } else {
                    assertThat(status).as(role + " at " + name(route)).isEqualTo(403);
                }
            }
        }
    }

    @Test
    void everyUnsafeRouteRefusesAFormWithoutItsToken() {
        TestBrowser all = server.signInAs(Role.values());
        for (Endpoint route : routes) {
            if (!route.method.equals(HandlerType.GET)) {
                HttpResponse<String> answer = all.send(all.request(filled(route.path))
                        .header("Accept", "application/json")
                        .method(route.method.name(), BodyPublishers.noBody()));
                assertThat(answer.statusCode()).as(name(route)).isEqualTo(403);
                assertThat(answer.body()).contains("out of date");
            }
        }
    }

    private List<Endpoint> closed() {
        return routes.stream()
                .filter(route -> !roles(route).contains(Access.ANYONE))
                .toList();
    }

    private static HttpResponse<String> ask(TestBrowser browser, Endpoint route, String accept) {
        return browser.send(browser.request(filled(route.path))
                .header("Accept", accept)
                .header("X-CSRF-Token", browser.csrf())
                .method(route.method.name(), BodyPublishers.noBody()));
    }

    private static Set<RouteRole> roles(Endpoint route) {
        Roles roles = route.metadata(Roles.class);
        return roles == null ? Set.of() : roles.getRoles();
    }

    /** Something for every parameter; that nothing is there under it is no refusal. */
    private static String filled(String path) {
        return path.replaceAll("[{<][^}>]+[}>]", "999999");
    }

    private static String name(Endpoint route) {
        return route.method.name() + " " + route.path;
    }
}
