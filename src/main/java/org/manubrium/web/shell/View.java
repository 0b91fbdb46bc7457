package org.manubrium.web.shell;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.manubrium.security.Account;
import org.manubrium.security.Role;

/**
 * Draws pages. The model is made of maps, lists and plain values (records would be looked into by reflection, at three
 * times the price). Every page finds {@code csrf} in it and, if someone has signed in, {@code account} with {@code name}
 * and {@code roles.student}, {@code roles.educator}, {@code roles.reviewer}.
 */
public final class View {
    private final Templates templates = new Templates();

    /** Answers with the page {@code templates/<template>.html}. */
    public void show(Context answer, String template, Map<String, ?> model) {
        String page = templates.draw(template, complete(Visitor.of(answer), model));
        // Compressed, a page that holds a secret and something the visitor wrote would give the secret away by its
        // length.
        answer.disableCompression();
        answer.contentType("text/html; charset=utf-8").result(page);
    }

    private static Map<String, Object> complete(Visitor visitor, Map<String, ?> model) {
        Map<String, Object> whole = new HashMap<>(model);
        whole.put("csrf", visitor.csrf());
        visitor.session().ifPresent(session -> whole.put("account", account(session.account())));
        return whole;
    }

    private static Map<String, Object> account(Account account) {
        Map<String, Boolean> roles = Arrays.stream(Role.values())
                .map(role -> Map.entry(role.name().toLowerCase(Locale.ROOT), account.is(role)))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        return Map.of("name", account.displayName(), "roles", roles);
    }
}
