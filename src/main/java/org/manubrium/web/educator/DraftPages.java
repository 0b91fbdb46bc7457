package org.manubrium.web.educator;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Map;
import org.manubrium.school.Misfilled;
import org.manubrium.school.account.Refused;
import org.manubrium.school.casedesk.CaseText;
import org.manubrium.school.casedesk.CasesInUse;
import org.manubrium.school.casedesk.Drafts;
import org.manubrium.school.casedesk.Saving;
import org.manubrium.school.demo.ShippedCases;
import org.manubrium.store.CaseDraft;
import org.manubrium.store.CaseVersion;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** Writing a case: from a file or a pasted text to a version in use. */
public final class DraftPages {
    private final View view;
    private final DraftView page;
    private final Drafts drafts;
    private final CasesInUse cases;

    public DraftPages(View view, DraftView page, Drafts drafts, CasesInUse cases) {
        this.view = view;
        this.page = page;
        this.drafts = drafts;
        this.cases = cases;
    }

    public void form(Context ctx) {
        showForm(ctx, "", Map.of());
    }

    public void begin(Context ctx) {
        String pasted = Form.field(ctx, "text");
        String shipped = Form.field(ctx, "shipped");
        try {
            String text = shipped.isEmpty() ? sent(ctx, pasted) : shipped(shipped);
            CaseDraft draft = drafts.begin(Visitor.of(ctx).account().id(), text);
            ctx.redirect(address(draft), HttpStatus.SEE_OTHER);
        } catch (Misfilled misfilled) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            showForm(ctx, pasted, misfilled.faults());
        }
    }

    private static String shipped(String name) {
        if (!ShippedCases.names().contains(name)) {
            throw new NotFoundResponse("No such case comes with the programme.");
        }
        return ShippedCases.text(name);
    }

    public void show(Context ctx) {
        page.show(ctx, draft(ctx));
    }

    public void save(Context ctx) {
        CaseDraft draft = draft(ctx);
        String sent = Form.field(ctx, "text");
        try {
            Saving saving = drafts.save(draft, seen(ctx), sent);
            if (saving instanceof Saving.Stale stale) {
                page.showStale(ctx, stale);
            } else {
                ctx.redirect(address(draft) + "?done=saved", HttpStatus.SEE_OTHER);
            }
        } catch (Misfilled misfilled) {
            page.refuse(ctx, draft, sent, String.join(" ", misfilled.faults().values()));
        }
    }

    public void tryOut(Context ctx) {
        CaseDraft draft = draft(ctx);
        try {
            ctx.redirect("/attempts/" + cases.tryOut(draft), HttpStatus.SEE_OTHER);
        } catch (Refused refused) {
            page.refuse(ctx, draft, draft.yaml(), refused.sentence());
        }
    }

    public void putInUse(Context ctx) {
        CaseDraft draft = draft(ctx);
        try {
            CaseVersion made = cases.putInUse(draft, seen(ctx));
            ctx.redirect("/educator/versions/" + made.id() + "?done=in-use", HttpStatus.SEE_OTHER);
        } catch (Refused refused) {
            page.refuse(ctx, draft, draft.yaml(), refused.sentence());
        }
    }

    public void discard(Context ctx) {
        drafts.discard(draft(ctx));
        ctx.redirect("/educator?done=discarded", HttpStatus.SEE_OTHER);
    }

    private CaseDraft draft(Context ctx) {
        return drafts.find(Visitor.of(ctx).account().id(), Form.id(ctx, "draft"))
                .orElseThrow(() -> new NotFoundResponse("You have no such draft."));
    }

    private static String address(CaseDraft draft) {
        return "/educator/drafts/" + draft.id();
    }

    private void showForm(Context ctx, String text, Map<String, String> faults) {
        view.show(ctx, "educator/new-draft", Map.of("text", text, "faults", faults));
    }

    /** When the draft had been changed last as this browser saw it; long ago if it does not say. */
    private static Instant seen(Context ctx) {
        try {
            return Instant.parse(Form.field(ctx, "seen"));
        } catch (DateTimeException e) {
            return Instant.EPOCH;
        }
    }

    private static String sent(Context ctx, String pasted) {
        UploadedFile file = ctx.isMultipartFormData() ? ctx.uploadedFile("file") : null;
        return file == null || file.size() == 0 ? pasted : CaseText.decode(bytes(file));
    }

    private static byte[] bytes(UploadedFile file) {
        try (InputStream content = file.content()) {
            return content.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
