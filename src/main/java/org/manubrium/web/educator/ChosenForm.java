package org.manubrium.web.educator;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Variant;
import org.manubrium.school.signdesk.Chosen;
import org.manubrium.web.shell.Form;

/** Reads what an educator asks to see of a sign: "with" is a condition's id, then its level after a bar. */
final class ChosenForm {
    static final List<String> ONSETS = List.of("6 hours", "2 days", "6 weeks", "2 years");
    private static final int YOUNGEST = 18;
    private static final int OLDEST = 110;
    private static final int WHOLE = 100;

    private ChosenForm() {}

    /** @throws BadRequestResponse saying what was expected */
    static Chosen read(Context ctx) {
        String[] with = Form.query(ctx, "with").split("\\|", 2);
        return new Chosen(
                Optional.of(with[0]).filter(id -> !id.isBlank()),
                side(Form.query(ctx, "side")),
                with.length == 1 ? Optional.empty() : Optional.of(with[1]),
                number(Form.query(ctx, "severity"), "severity", 0, WHOLE, WHOLE) / WHOLE,
                onset(Form.query(ctx, "onset")),
                (int) number(Form.query(ctx, "age"), "age", YOUNGEST, OLDEST, Chosen.USUAL_AGE));
    }

    static Map<String, String> technique(Context ctx, Manoeuvre manoeuvre) {
        Map<String, String> technique = new LinkedHashMap<>();
        for (Variant variant : manoeuvre.variants()) {
            String choice = Form.query(ctx, "how-" + variant.id());
            if (variant.choices().stream().anyMatch(c -> c.id().equals(choice))) {
                technique.put(variant.id(), choice);
            } else if (!choice.isEmpty()) {
                throw new BadRequestResponse("\"" + choice + "\" is no way of " + variant.name() + ".");
            }
        }
        return technique;
    }

    private static Side side(String text) {
        return text.isEmpty()
                ? Side.LEFT
                : Side.of(text)
                        .filter(side -> side != Side.NONE)
                        .orElseThrow(
                                () -> new BadRequestResponse("side: expected right or left, found \"" + text + "\"."));
    }

    private static Optional<Onset> onset(String text) {
        return text.isEmpty()
                ? Optional.empty()
                : Optional.of(Onset.parse(text)
                        .orElseThrow(() -> new BadRequestResponse(
                                "onset: expected for example \"6 weeks\", found \"" + text + "\".")));
    }

    private static double number(String text, String name, int least, int most, int usual) {
        if (text.isEmpty()) {
            return usual;
        }
        Optional<Integer> number = text.matches("\\d{1,3}") ? Optional.of(Integer.valueOf(text)) : Optional.empty();
        return number.filter(n -> n >= least && n <= most)
                .orElseThrow(() -> new BadRequestResponse(
                        name + ": expected a number from " + least + " to " + most + ", found \"" + text + "\"."));
    }
}
