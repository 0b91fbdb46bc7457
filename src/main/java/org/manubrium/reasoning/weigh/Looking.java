package org.manubrium.reasoning.weigh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Item;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.patient.Ailment;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.sign.Signs;

/**
 * What each member shows. An item that a fully developed illness leaves as it is in health is as in health in its milder
 * forms too; one that is alike in healthy people of every natural variation is alike in ill ones. So most bodies need not be
 * examined at all.
 */
final class Looking {
    private final Signs signs;
    private final List<Body> kinds;
    private final List<Member> members;
    private final Body well;
    private final Map<Item, boolean[]> touched = new LinkedHashMap<>();
    private final Map<Form, Body> bodies = new HashMap<>();

    /** One body: the kind of illness, or -1 for none. */
    private record Form(int kind, double severity, long seed) {}

    Looking(Signs signs, Body patient, List<Body> kinds, List<Member> members) {
        this.signs = signs;
        this.kinds = kinds;
        this.members = members;
        this.well =
                patient.with(patient.ailments().stream().filter(Ailment::old).toList());
        signs.examination().manoeuvres().forEach(this::touch);
    }

    private Finding find(Form form, Manoeuvre manoeuvre, Item item) {
        Body body =
                bodies.computeIfAbsent(form, f -> Member.at(f.kind < 0 ? well : kinds.get(f.kind), f.severity, f.seed));
        return find(body, manoeuvre, item);
    }

    Finding find(Body body, Manoeuvre manoeuvre, Item item) {
        return signs.finding(body, Signs.usual(manoeuvre, item));
    }

    private void touch(Manoeuvre manoeuvre) {
        for (Item item : Examination.items(manoeuvre)) {
            Finding usual = find(new Form(-1, 1, 0), manoeuvre, item);
            boolean[] changed = new boolean[kinds.size()];
            boolean any = false;
            for (int k = 0; k < changed.length; k++) {
                Finding full = find(new Form(k, 1, 0), manoeuvre, item);
                changed[k] = !usual.equals(full);
                any |= changed[k] && differ(manoeuvre, usual, full);
            }
            if (any) {
                touched.put(item, changed);
            }
        }
    }

    /** Whether two findings would be written down differently. */
    private boolean differ(Manoeuvre manoeuvre, Finding one, Finding other) {
        if (one instanceof Finding.Measured a && other instanceof Finding.Measured b) {
            return Math.abs(a.value() - b.value()) > manoeuvre.tolerance();
        }
        return !signs.reading(manoeuvre, one).equals(signs.reading(manoeuvre, other));
    }

    /** Whether some illness changes what the item shows. */
    boolean tells(Item item) {
        return touched.containsKey(item);
    }

    /** What the item shows in each member. */
    List<Finding> findings(Manoeuvre manoeuvre, Item item) {
        boolean[] changed = touched.getOrDefault(item, new boolean[kinds.size()]);
        Map<Form, Finding> seen = new HashMap<>();
        boolean varies = false;
        for (long seed : Member.seeds()) {
            Form form = new Form(-1, 1, seed);
            Finding usual = find(form, manoeuvre, item);
            seen.put(form, usual);
            varies |= !usual.equals(seen.get(new Form(-1, 1, 0)));
        }
        List<Finding> found = new ArrayList<>();
        for (Member member : members) {
            long seed = varies ? member.seed(manoeuvre.reader()) : 0;
            Form form =
                    changed[member.kind()] ? new Form(member.kind(), member.severity(), seed) : new Form(-1, 1, seed);
            found.add(seen.computeIfAbsent(form, f -> find(f, manoeuvre, item)));
        }
        return found;
    }
}
