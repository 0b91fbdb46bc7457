package org.manubrium.learning.question;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.marking.convention.Conventions;
import org.manubrium.patient.Conditions;
import org.manubrium.patient.Physiology;
import org.manubrium.patient.sign.Signs;

/** Makes short questions: the same seed always makes the same question. */
public final class QuestionMaker {
    private static final int TRIES = 4;

    private final Map<String, Asker> askers = new LinkedHashMap<>();
    private final Set<String> facts = new LinkedHashSet<>();

    public QuestionMaker(
            Anatomy anatomy, Physiology physiology, Conditions conditions, Signs signs, Conventions conventions) {
        Invented invented = new Invented(anatomy, physiology, conditions, signs);
        Affecting affecting = new Affecting(invented);
        List.of(
                        new RootAsker(invented, conventions),
                        new ReadAsker(invented, conventions, affecting),
                        new TellAsker(invented, affecting),
                        new NextAsker(invented, affecting),
                        new WhereAsker(invented, affecting))
                .forEach(asker -> askers.put(asker.kind(), asker));
        askers.values().forEach(asker -> asker.subjects().forEach(subject -> facts.add(asker.fact(subject))));
    }

    /** Everything that can be asked, as "kind:what". */
    public Set<String> facts() {
        return Set.copyOf(facts);
    }

    /**
     * A question about a fact; empty if the model finds nothing to ask about, as when nothing tells two diseases apart.
     *
     * @param convention the student's teaching convention
     * @param confused wrong answers that fellow students gave, the commonest first
     */
    public Optional<SignQuestion> ask(String fact, String convention, List<String> confused, long seed) {
        int colon = fact.indexOf(':');
        Asker asker = askers.get(fact.substring(0, Math.max(0, colon)));
        if (asker == null || !facts.contains(fact)) {
            return Optional.empty();
        }
        Random random = new Random(seed * 31 + fact.hashCode());
        Optional<SignQuestion> made = Optional.empty();
        for (int i = 0; i < TRIES && made.isEmpty(); i++) {
            made = asker.ask(fact.substring(colon + 1), convention, confused, random);
        }
        return made;
    }
}
