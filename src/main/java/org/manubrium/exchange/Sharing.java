package org.manubrium.exchange;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Form;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.marking.key.ReadingKey;

/** The lines of one key say much alike, of two sides and many places: what is equal is kept once. */
final class Sharing {
    private final Map<Object, Object> kept = new HashMap<>();

    private Sharing() {}

    /** An equal key that takes less room. */
    static CompiledKey in(CompiledKey key) {
        Sharing sharing = new Sharing();
        return key.with(key.lines().stream().map(sharing::line).toList());
    }

    private KeyLine line(KeyLine line) {
        return new KeyLine(
                line.item(),
                line.name(),
                line.label(),
                line.intimacy(),
                line.together(),
                once(line.necessity()),
                once(line.showing()),
                once(line.questions()),
                reading(line.reading()),
                once(List.copyOf(line.forms().stream().map(this::form).toList())),
                each(line.published()),
                once(line.site()),
                once(line.means()),
                once(line.origin()),
                each(line.beneath()));
    }

    private ReadingKey reading(ReadingKey reading) {
        return once(
                reading instanceof ReadingKey.Graded graded ? new ReadingKey.Graded(each(graded.scales())) : reading);
    }

    private Form form(Form form) {
        return once(new Form(
                form.convention(),
                form.scale(),
                form.normal(),
                form.least(),
                form.most(),
                each(form.roots()),
                once(form.normalOrigin()),
                once(form.rootsOrigin())));
    }

    private <T> List<T> each(List<T> parts) {
        return once(List.copyOf(parts.stream().map(this::once).toList()));
    }

    @SuppressWarnings("unchecked") // what is equal is of one type, or a list of equal parts
    private <T> T once(T part) {
        Object known = kept.putIfAbsent(part, part);
        return known == null ? part : (T) known;
    }
}
