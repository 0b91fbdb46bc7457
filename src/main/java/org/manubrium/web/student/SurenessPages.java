package org.manubrium.web.student;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.manubrium.learning.Calibration;
import org.manubrium.learning.Calibration.Judgement;
import org.manubrium.learning.Calibration.Step;
import org.manubrium.school.mark.HowSure;
import org.manubrium.web.shell.View;
import org.manubrium.web.shell.Visitor;

/** How sure the student was, and how often it came true; nothing is shown of too few judgements. */
public final class SurenessPages {
    private static final double HARDLY = 0.05;

    private final View view;
    private final HowSure howSure;

    public SurenessPages(View view, HowSure howSure) {
        this.view = view;
        this.howSure = howSure;
    }

    public void show(Context ctx) {
        List<Judgement> judgements = howSure.of(Visitor.of(ctx).account().id());
        Map<String, Object> model = new HashMap<>();
        model.put("n", judgements.size());
        model.put("needed", Calibration.ENOUGH);
        model.put("neededForSteps", Calibration.ENOUGH_FOR_STEPS);
        model.put("enough", judgements.size() >= Calibration.ENOUGH);
        model.put("steps", List.of());
        if (judgements.size() >= Calibration.ENOUGH) {
            Calibration found = Calibration.of(judgements);
            model.put("sentence", sentence(found.over()));
            model.put("score", Math.round(100 * (1 - found.brier())) / 100.0);
            if (judgements.size() >= Calibration.ENOUGH_FOR_STEPS) {
                model.put(
                        "steps", found.steps().stream().map(SurenessPages::row).toList());
            }
        }
        view.show(ctx, "student/sureness", model);
    }

    private static String sentence(double over) {
        if (Math.abs(over) < HARDLY) {
            return "On the whole you are as sure as you are right.";
        }
        return "On the whole you are " + Math.round(100 * Math.abs(over)) + " points "
                + (over > 0 ? "surer than you are right." : "less sure than you are right.");
    }

    private static Map<String, Object> row(Step step) {
        Map<String, Object> row = new HashMap<>();
        row.put("said", Math.round(100 * step.p()));
        row.put("n", step.n());
        row.put("enough", step.n() >= Calibration.ENOUGH_IN_STEP);
        row.put("share", Math.round(100 * step.share()));
        row.put("low", Math.round(100 * step.low()));
        row.put("high", Math.round(100 * step.high()));
        return row;
    }
}
