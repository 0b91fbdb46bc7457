package org.manubrium.school.cohort;

import java.text.Normalizer;
import java.util.Locale;
import java.util.stream.IntStream;
import org.manubrium.store.Stores;

/** Sign-in names made of people's names: "Ada Fenn" becomes ada.fenn, the next one ada.fenn2. */
final class LoginNames {
    private static final int LONGEST = 90;
    private static final String FALLBACK = "student";

    private LoginNames() {}

    static String free(Stores stores, String name) {
        String plain = plain(name);
        return IntStream.iterate(1, n -> n + 1)
                .mapToObj(n -> n == 1 ? plain : plain + n)
                .filter(login -> stores.accounts().named(login).isEmpty())
                .findFirst()
                .orElseThrow();
    }

    static String plain(String name) {
        String bare = Normalizer.normalize(name, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
        String dotted = bare.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", ".")
                .replaceAll("^\\.+", "");
        String cut = dotted.substring(0, Math.min(LONGEST, dotted.length())).replaceAll("\\.+$", "");
        return cut.length() < 2 ? FALLBACK : cut;
    }
}
