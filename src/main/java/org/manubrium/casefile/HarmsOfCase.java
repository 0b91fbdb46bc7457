package org.manubrium.casefile;

import java.util.List;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.marking.key.HarmRule;
import org.manubrium.patient.Body;
import org.manubrium.patient.sign.Signs;

/** What the rules about harm are about in one patient: found by the cautions of manoeuvres, not by their names. */
final class HarmsOfCase {
    private final Signs signs;
    private final List<HarmRule> rules;

    HarmsOfCase(Signs signs, List<HarmRule> rules) {
        this.signs = signs;
        this.rules = List.copyOf(rules);
    }

    /** @param unsafe the cautions of what must not be done to this patient */
    List<HarmRule> of(Body body, List<String> unsafe) {
        return rules.stream()
                .filter(rule -> !rule.before().equals("unsafe") || unsafe.contains(rule.caution()))
                .map(rule -> rule.caution().isEmpty() ? rule : rule.about(manoeuvres(rule, body)))
                .toList();
    }

    private List<String> manoeuvres(HarmRule rule, Body body) {
        return signs.examination().manoeuvres().stream()
                .filter(manoeuvre -> manoeuvre.cautions().contains(rule.caution()))
                .filter(manoeuvre -> !rule.before().equals("symptoms") || complains(rule, manoeuvre, body))
                .map(Manoeuvre::id)
                .toList();
    }

    /** Whether the patient says something, in one of the rule's positions, that the same person in health does not. */
    private boolean complains(HarmRule rule, Manoeuvre manoeuvre, Body body) {
        Body healthy = body.healthy();
        return manoeuvre.positions().stream()
                .filter(rule.positions()::contains)
                .flatMap(position -> Examination.items(manoeuvre).stream()
                        .map(item -> new Probe(item, position, java.util.Map.of())))
                .anyMatch(probe -> !signs.show(body, probe).words().isEmpty()
                        && !signs.show(body, probe)
                                .words()
                                .equals(signs.show(healthy, probe).words()));
    }
}
