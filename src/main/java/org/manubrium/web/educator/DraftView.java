package org.manubrium.web.educator;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.casefile.CaseFile;
import org.manubrium.casefile.CaseReading;
import org.manubrium.casefile.Problem;
import org.manubrium.school.casedesk.CaseCheck;
import org.manubrium.school.casedesk.CasesInUse;
import org.manubrium.school.casedesk.Saving;
import org.manubrium.store.CaseDraft;
import org.manubrium.store.VersionLine;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.Moments;
import org.manubrium.web.shell.View;

/** Draws a draft with its problems, or the two texts of a draft that was changed in two places. */
public final class DraftView {
    private final View view;
    private final CaseCheck check;
    private final CasesInUse cases;
    private final Moments moments;

    public DraftView(View view, CaseCheck check, CasesInUse cases, Moments moments) {
        this.view = view;
        this.check = check;
        this.cases = cases;
        this.moments = moments;
    }

    void show(Context ctx, CaseDraft draft) {
        show(ctx, draft, draft.yaml(), "");
    }

    /** The page with what was sent still in it, and why that will not do. */
    void refuse(Context ctx, CaseDraft draft, String text, String fault) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, draft, text, fault);
    }

    void showStale(Context ctx, Saving.Stale stale) {
        ctx.status(HttpStatus.CONFLICT);
        Map<String, Object> model = new HashMap<>(draft(stale.other()));
        model.put("text", stale.text());
        model.put("other", stale.other().yaml());
        view.show(ctx, "educator/stale-draft", model);
    }

    private void show(Context ctx, CaseDraft draft, String text, String fault) {
        CaseReading reading = check.read(text);
        List<Problem> problems = reading.problems();
        Map<String, Object> model = new HashMap<>(draft(draft));
        model.put("text", text);
        model.put("fault", fault);
        model.put("saved", Form.query(ctx, "done").equals("saved"));
        model.put("kept", text.equals(draft.yaml()));
        model.put("problems", problems.stream().map(NumberedText::problem).toList());
        model.put("lines", NumberedText.of(text, problems));
        model.put("becomes", reading.caseFile().map(this::becomes).orElse(""));
        view.show(ctx, "educator/draft", model);
    }

    private String becomes(CaseFile file) {
        return cases.named(file.slug())
                .map(shelf -> "It will be version "
                        + (shelf.newest().map(VersionLine::version).orElse(0) + 1) + " of “"
                        + shelf.file().title() + "”, which has the short name " + file.slug() + ".")
                .orElse("It will be version 1 of a new case with the short name " + file.slug() + ".");
    }

    private Map<String, Object> draft(CaseDraft draft) {
        return Map.of(
                "id", draft.id(),
                "title", draft.title(),
                "seen", draft.updatedAt().toString(),
                "touched", moments.read(draft.updatedAt()));
    }
}
