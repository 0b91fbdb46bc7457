package org.manubrium.web.cohort;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.school.account.Refused;
import org.manubrium.school.cohort.Invitations;
import org.manubrium.school.cohort.NewPlace;
import org.manubrium.school.cohort.PastedRoster;
import org.manubrium.school.cohort.Rosters;
import org.manubrium.security.Token;
import org.manubrium.store.Cohort;
import org.manubrium.web.shell.Addresses;
import org.manubrium.web.shell.Form;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/**
 * Adding students. Links are shown once, in the answer to the form itself and not after a redirect: nothing keeps them.
 * Sending the form again is harmless, since the names are then in the cohort already.
 */
public final class RosterPages {
    private final View view;
    private final CohortView page;
    private final Rosters rosters;
    private final Invitations invitations;
    private final Addresses addresses;

    public RosterPages(View view, CohortView page, Rosters rosters, Invitations invitations, Addresses addresses) {
        this.view = view;
        this.page = page;
        this.rosters = rosters;
        this.invitations = invitations;
        this.addresses = addresses;
    }

    public void paste(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        String pasted = Form.field(ctx, "names");
        PastedRoster roster = rosters.read(cohort.id(), pasted);
        if (!roster.problems().isEmpty() || roster.names().isEmpty()) {
            refuse(ctx, cohort, pasted, roster);
        } else {
            showLinks(ctx, cohort, rosters.enrol(Visitor.of(ctx).account().id(), cohort.id(), pasted));
        }
    }

    public void renewLink(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        try {
            NewPlace place = rosters.renewLink(Visitor.of(ctx).account().id(), cohort.id(), Form.id(ctx, "account"))
                    .orElseThrow(() -> new NotFoundResponse("There is no such student in this cohort."));
            showLinks(ctx, cohort, List.of(place));
        } catch (Refused refused) {
            page.refuse(ctx, cohort, Map.of("students", refused.sentence()), Map.of());
        }
    }

    public void invite(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        Token token = invitations.invite(Visitor.of(ctx).account().id(), cohort.id());
        view.show(
                ctx,
                "cohort/invitation",
                Map.of(
                        "cohort", Map.of("id", cohort.id(), "name", cohort.name()),
                        "link", addresses.of(ctx, "/join/" + token.text())));
    }

    public void uninvite(Context ctx) {
        Cohort cohort = page.cohort(ctx);
        invitations.takeBack(Visitor.of(ctx).account().id(), cohort.id());
        CohortView.done(ctx, cohort, "uninvited");
    }

    private void refuse(Context ctx, Cohort cohort, String pasted, PastedRoster roster) {
        Map<String, Object> written = new HashMap<>();
        written.put("pasted", pasted);
        written.put(
                "problems", roster.problems().stream().map(RosterPages::problem).toList());
        String fault = roster.names().isEmpty()
                ? "Paste at least one name."
                : "Nobody has been added yet. Mend these lines and send the list again.";
        page.refuse(ctx, cohort, Map.of("names", fault), written);
    }

    private void showLinks(Context ctx, Cohort cohort, List<NewPlace> places) {
        ctx.status(HttpStatus.OK);
        List<Map<String, String>> lines = places.stream()
                .map(place -> Map.of(
                        "name", place.name(),
                        "login", place.loginName(),
                        "link", addresses.of(ctx, "/welcome/" + place.link().text())))
                .toList();
        view.show(
                ctx,
                "cohort/links",
                Map.of("cohort", Map.of("id", cohort.id(), "name", cohort.name()), "places", lines));
    }

    private static Map<String, Object> problem(PastedRoster.Problem problem) {
        return Map.of("line", problem.line(), "text", problem.text(), "what", problem.what());
    }
}
