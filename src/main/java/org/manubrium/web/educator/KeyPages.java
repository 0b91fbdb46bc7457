package org.manubrium.web.educator;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.correction.Correction;
import org.manubrium.school.account.Refused;
import org.manubrium.school.casedesk.CasesInUse;
import org.manubrium.school.cohort.Cohorts;
import org.manubrium.school.mark.KeyDesk;
import org.manubrium.school.mark.Remarkings;
import org.manubrium.store.CaseVersion;
import org.manubrium.store.KeyCorrection;
import org.manubrium.store.Remarking;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.Moments;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** The key of a case version in use: what is marked, its corrections, and the rounds of marking again. */
public final class KeyPages {
    private static final Map<String, String> NOTHING_WRITTEN = Map.of("fault", "", "line", "", "to", "", "reason", "");

    /** What may be written into a line, by its kind. */
    private static final Map<String, String> HINTS = Map.of(
            "essential", "Write “not needed” to take the manoeuvre out of what is marked.",
            "reading", "A number without its unit, or a level of the scale; a wrong level is answered with the list.",
            "normal", "normal, or abnormal",
            "roots", "Roots, as C7 or C6-C7.",
            "means", "The short name of a term; the first earns all, those after an “or” earn half.",
            "site", "A site, as spinal cord T8 left half.",
            "conclusion", "Words or sites that are to be accepted.");

    private final View view;
    private final CasesInUse cases;
    private final KeyDesk keys;
    private final Remarkings remarkings;
    private final Cohorts cohorts;
    private final Moments moments;

    public KeyPages(
            View view, CasesInUse cases, KeyDesk keys, Remarkings remarkings, Cohorts cohorts, Moments moments) {
        this.view = view;
        this.cases = cases;
        this.keys = keys;
        this.remarkings = remarkings;
        this.cohorts = cohorts;
        this.moments = moments;
    }

    public void show(Context ctx) {
        show(ctx, find(ctx), NOTHING_WRITTEN);
    }

    public void compileAnew(Context ctx) {
        CaseVersion version = find(ctx);
        change(ctx, version, () -> keys.compileAnew(educator(ctx), version, Form.field(ctx, "reason")));
    }

    public void correct(Context ctx) {
        CaseVersion version = find(ctx);
        List<String> under = Form.ticked(ctx, "everywhere")
                ? keys.conventions(version.id())
                : List.of(Form.field(ctx, "convention"));
        Correction correction = new Correction(Form.field(ctx, "line"), under, Form.field(ctx, "to"));
        change(ctx, version, () -> keys.correct(educator(ctx), version, correction, Form.field(ctx, "reason")));
    }

    private void change(Context ctx, CaseVersion version, Runnable change) {
        try {
            change.run();
            ctx.redirect(
                    "/educator/versions/" + version.id() + "/key?convention=" + convention(ctx, version),
                    HttpStatus.SEE_OTHER);
        } catch (Refused refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(
                    ctx,
                    version,
                    Map.of(
                            "fault", refused.sentence(),
                            "line", Form.field(ctx, "line"),
                            "to", Form.field(ctx, "to"),
                            "reason", Form.field(ctx, "reason")));
        }
    }

    /** @param written what was refused, and why: it stands in its fields again */
    private void show(Context ctx, CaseVersion version, Map<String, String> written) {
        String convention = convention(ctx, version);
        Map<String, Object> model = new HashMap<>();
        model.put("version", version.id());
        model.put("number", version.version());
        model.put("title", cases.find(version.caseId()).orElseThrow().file().title());
        model.put("convention", convention);
        model.put(
                "conventions",
                keys.conventions(version.id()).stream().map(this::named).toList());
        model.put(
                "lines",
                keys.lines(version.id(), convention).stream()
                        .map(KeyPages::line)
                        .toList());
        model.put(
                "corrections",
                keys.corrections(version.id()).stream().map(this::correction).toList());
        model.put(
                "rounds", remarkings.of(version.id()).stream().map(this::round).toList());
        model.put("written", written);
        view.show(ctx, "educator/key", model);
    }

    private String convention(Context ctx, CaseVersion version) {
        List<String> known = keys.conventions(version.id());
        String asked = Form.field(ctx, "convention") + Form.query(ctx, "convention");
        return known.contains(asked) ? asked : known.get(0);
    }

    private Map<String, Object> named(String convention) {
        return Map.of("id", convention, "name", cohorts.conventionName(convention));
    }

    private static Map<String, Object> line(MarkSheet.Line line) {
        return Map.of(
                "id", line.id(),
                "domain", line.domain().word(),
                "asked", line.asked(),
                "key", line.key(),
                "hint", HINTS.getOrDefault(line.id().replaceFirst("/.*", ""), ""));
    }

    private Map<String, Object> correction(KeyCorrection made) {
        return Map.of("when", moments.read(made.madeAt()), "what", made.what(), "why", made.reason());
    }

    private Map<String, Object> round(Remarking round) {
        return Map.of(
                "when", moments.read(round.askedAt()),
                "why", round.reason(),
                "changed", round.changed(),
                "unchanged", round.unchanged(),
                "failed", round.failed(),
                "finished", round.isFinished());
    }

    private CaseVersion find(Context ctx) {
        return cases.version(Form.id(ctx, "version"))
                .orElseThrow(() -> new NotFoundResponse("There is no such version of a case."));
    }

    private static long educator(Context ctx) {
        return Visitor.of(ctx).account().id();
    }
}
