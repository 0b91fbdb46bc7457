package org.manubrium.patient.sign;

import java.util.List;
import org.manubrium.anatomy.Side;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;
import org.manubrium.patient.Physiology;

/** What a careful examiner reads off the two pupils during one test. */
record PupilJudge(Physiology numbers, Eyes eyes, PupilPlan plan, PupilTrace trace) {
    static final String NO_DEFECT = "no-defect";
    static final String PROMPT = "prompt";

    static PupilJudge of(Body body, Manoeuvre manoeuvre, Probe probe) {
        PupilPlan plan = PupilPlan.of(body.physiology(), manoeuvre, probe);
        return body.once(plan, PupilJudge.class, () -> of(body, plan));
    }

    private static PupilJudge of(Body body, PupilPlan plan) {
        Eyes eyes = Eyes.of(body);
        return new PupilJudge(body.physiology(), eyes, plan, PupilTrace.run(body, eyes, plan.before(), plan.spells()));
    }

    Finding finding(String part, Side eye) {
        return switch (part) {
            case "size-light", "size-dark" -> millimetres(trace.at(eye, 0));
            case "near" -> new Finding.Seen(near(eye));
            case "swing" -> new Finding.Seen(swing());
            case "dark-lag" -> millimetres(lag());
            default -> new Finding.Graded("pupil-reaction", reaction(eye));
        };
    }

    private static Finding millimetres(double amount) {
        return new Finding.Measured(Math.round(amount * 100) / 100.0, "mm");
    }

    /** The narrowing to a torch as a share of the size before it; 1 for the average healthy adult. */
    private double reaction(Side eye) {
        double before = trace.at(eye, 0);
        double least = trace.least(eye, plan.spells().get(0).seconds());
        return (before - least) / before / numbers.constant("pupil.reaction-full");
    }

    private String near(Side eye) {
        double before = trace.at(eye, 0);
        double narrowed = before - trace.least(eye, plan.spells().get(0).seconds());
        double share = narrowed / before / eyes.nearShare();
        if (share < numbers.constant("pupil.near-absent")) {
            return "absent";
        }
        if (seconds(trace.of(eye), before - narrowed * numbers.constant("pupil.near-part"))
                > numbers.constant("pupil.near-slow")) {
            return "slow";
        }
        return share < numbers.constant("pupil.near-weak") ? "weak" : PROMPT;
    }

    private static double seconds(List<Double> sizes, double until) {
        int sample = 0;
        while (sample < sizes.size() && sizes.get(sample) > until) {
            sample++;
        }
        return sample * PupilTrace.STEP_MS / 1000;
    }

    /** The difference between what comes in by the two eyes, in log units as a filter would balance it. */
    private String swing() {
        if (Math.max(reaction(Side.RIGHT), reaction(Side.LEFT)) < numbers.constant("pupil.reaction-seen")) {
            return "unusable";
        }
        double least = numbers.constant("pupil.gain-least");
        double balance = Math.log10(Math.max(least, eyes.gainRight()) / Math.max(least, eyes.gainLeft()));
        if (Math.abs(balance) < numbers.constant("pupil.defect-log")) {
            return NO_DEFECT;
        }
        return balance < 0 ? "right-defect" : "left-defect";
    }

    /** By how much the pupils differ more early in darkness than late, in millimetres. */
    private double lag() {
        return difference(numbers.constant("pupil.lag-early")) - difference(numbers.constant("pupil.lag-late"));
    }

    private double difference(double seconds) {
        return Math.abs(trace.at(Side.RIGHT, seconds) - trace.at(Side.LEFT, seconds));
    }
}
