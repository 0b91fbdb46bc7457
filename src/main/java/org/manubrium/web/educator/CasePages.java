package org.manubrium.web.educator;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.casefile.Difficulty;
import org.manubrium.school.casedesk.CaseOnShelf;
import org.manubrium.school.casedesk.CasesInUse;
import org.manubrium.school.casedesk.Drafts;
import org.manubrium.school.demo.ShippedCases;
import org.manubrium.store.CaseDraft;
import org.manubrium.store.CaseVersion;
import org.manubrium.store.VersionLine;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.Moments;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** The case desk: what is being written, what is in use, and what a version says. */
public final class CasePages {
    private static final Map<String, String> DONE = Map.of("discarded", "The draft has been thrown away.");
    private static final int HASH_SHOWN = 12;

    private final View view;
    private final Drafts drafts;
    private final CasesInUse cases;
    private final Moments moments;

    public CasePages(View view, Drafts drafts, CasesInUse cases, Moments moments) {
        this.view = view;
        this.drafts = drafts;
        this.cases = cases;
        this.moments = moments;
    }

    public void desk(Context ctx) {
        view.show(
                ctx,
                "educator/desk",
                Map.of(
                        "drafts",
                                drafts.of(educator(ctx)).stream()
                                        .map(this::draft)
                                        .toList(),
                        "cases", cases.all().stream().map(this::shelf).toList(),
                        "shipped", shipped(),
                        "done", DONE.getOrDefault(Form.query(ctx, "done"), "")));
    }

    /** The cases that come with the programme, by difficulty. */
    private static List<Map<String, Object>> shipped() {
        List<ShippedCases.Shipped> all = ShippedCases.all();
        return Arrays.stream(Difficulty.values())
                .map(Difficulty::word)
                .map(word -> Map.<String, Object>of(
                        "difficulty",
                        word,
                        "cases",
                        all.stream()
                                .filter(one -> one.difficulty().equals(word))
                                .map(one -> Map.of("name", one.name(), "title", one.title()))
                                .toList()))
                .toList();
    }

    public void version(Context ctx) {
        CaseVersion version = find(ctx);
        CaseOnShelf shelf = cases.find(version.caseId()).orElseThrow(NotFoundResponse::new);
        Map<String, Object> model = new HashMap<>();
        model.put("title", shelf.file().title());
        shelf.versions().stream()
                .filter(line -> line.id() == version.id())
                .forEach(line -> model.put("version", row(line)));
        model.put(
                "tables",
                version.tablesHash()
                        .substring(0, Math.min(HASH_SHOWN, version.tablesHash().length())));
        model.put("others", shelf.versions().stream().map(this::row).toList());
        model.put("lines", NumberedText.of(version.yaml(), List.of()));
        model.put("done", Form.query(ctx, "done").equals("in-use"));
        view.show(ctx, "educator/version", model);
    }

    public void tryOut(Context ctx) {
        long attempt = cases.tryOut(educator(ctx), find(ctx));
        ctx.redirect("/attempts/" + attempt, HttpStatus.SEE_OTHER);
    }

    public void revise(Context ctx) {
        CaseDraft draft = cases.revise(educator(ctx), find(ctx));
        ctx.redirect("/educator/drafts/" + draft.id(), HttpStatus.SEE_OTHER);
    }

    private CaseVersion find(Context ctx) {
        return cases.version(Form.id(ctx, "version"))
                .orElseThrow(() -> new NotFoundResponse("There is no such version of a case."));
    }

    private static long educator(Context ctx) {
        return Visitor.of(ctx).account().id();
    }

    private Map<String, Object> draft(CaseDraft draft) {
        return Map.of("id", draft.id(), "title", draft.title(), "touched", moments.read(draft.updatedAt()));
    }

    private Map<String, Object> shelf(CaseOnShelf shelf) {
        return Map.of(
                "title", shelf.file().title(),
                "versions", shelf.versions().stream().map(this::row).toList());
    }

    private Map<String, Object> row(VersionLine version) {
        return Map.of(
                "id", version.id(),
                "number", version.version(),
                "since", moments.read(version.publishedAt()),
                "shipped", version.publishedBy().isEmpty());
    }
}
