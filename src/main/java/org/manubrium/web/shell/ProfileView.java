package org.manubrium.web.shell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.manubrium.marking.profile.Handling;
import org.manubrium.marking.profile.Profile;
import org.manubrium.reasoning.Curve.Point;
import org.manubrium.school.mark.Profiles;

/**
 * A profile as the page's model. Uncertainty is told as the number of diagnoses that would be as open if all were equally
 * likely: two to the power of the bits.
 */
public final class ProfileView {
    private static final double WIDTH = 340;
    private static final double HEIGHT = 200;
    private static final int MINUTE = 60;

    private final Profiles profiles;

    public ProfileView(Profiles profiles) {
        this.profiles = profiles;
    }

    /** The model of an attempt's profile; empty if it has none. */
    public Map<String, Object> model(long attempt) {
        return profiles.of(attempt).map(ProfileView::model).orElse(Map.of());
    }

    private static Map<String, Object> model(Profile profile) {
        Scale scale = Scale.of(profile);
        Map<String, Object> model = new HashMap<>();
        model.put("own", scale.line(profile.own()));
        model.put("efficient", scale.line(profile.efficient()));
        model.put("ownEnd", scale.dot(profile.end()));
        model.put("rows", rows(profile.own()));
        model.put("fastRows", rows(profile.efficient()));
        model.put("ticks", scale.ticks());
        model.put("clocks", scale.clocks());
        model.put("sentence", sentence(profile));
        model.put("efficientSentence", efficientSentence(profile));
        model.put("missed", profile.missed());
        model.put("handling", handling(profile.handling()));
        model.put("idle", profile.idleSeconds() > 0 ? clock(profile.idleSeconds()) : "");
        return model;
    }

    private static String sentence(Profile profile) {
        Point start = profile.own().get(0);
        Point end = profile.end();
        return "Before you began, the question was as open as " + open(start)
                + " equally likely diagnoses. After what you "
                + "examined it is as open as " + open(end) + "; what is true of the patient has a chance of "
                + of100(end.truth()) + " in 100.";
    }

    private static String efficientSentence(Profile profile) {
        Point end = profile.efficient().get(profile.efficient().size() - 1);
        String steps = (profile.efficient().size() - 1) + " steps and " + clock(end.seconds());
        return end.truth() >= profile.threshold()
                ? "Doing each time what then promised most for its time would have taken " + steps + " to bring it to "
                        + of100(end.truth()) + " in 100."
                : "No examination here makes it as likely as " + of100(profile.threshold())
                        + " in 100: doing each time what " + "promised most for its time comes to " + of100(end.truth())
                        + " in 100 after " + steps + ".";
    }

    private static Map<String, Object> handling(Handling handling) {
        return Map.of(
                "steps", handling.steps(),
                "changes", handling.changes(),
                "fewestChanges", handling.fewestChanges(),
                "clock", clock(handling.seconds()),
                "fewestClock", clock(handling.fewestSeconds()));
    }

    private static List<Map<String, Object>> rows(List<Point> points) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Point point : points) {
            rows.add(Map.of(
                    "clock", clock(point.seconds()),
                    "step", point.label().isEmpty() ? "before examining" : point.label(),
                    "open", open(point),
                    "leader", point.leader(),
                    "chance", of100(point.chance())));
        }
        return rows;
    }

    private static String open(Point point) {
        return String.format(Locale.ROOT, "%.1f", diagnoses(point));
    }

    private static double diagnoses(Point point) {
        return Math.pow(2, point.bits());
    }

    private static long of100(double chance) {
        return Math.round(chance * 100);
    }

    private static String clock(int seconds) {
        return "%d:%02d".formatted(seconds / MINUTE, seconds % MINUTE);
    }

    /** Where seconds and open diagnoses lie in the drawing; one diagnosis is at the foot. */
    private record Scale(double seconds, double most) {
        static Scale of(Profile profile) {
            double last = Math.max(MINUTE, Math.max(last(profile.own()), last(profile.efficient())));
            double most = Math.max(most(profile.own()), most(profile.efficient()));
            return new Scale(Math.ceil(last / MINUTE) * MINUTE, Math.max(2, Math.ceil(most)));
        }

        private static double last(List<Point> points) {
            return points.get(points.size() - 1).seconds();
        }

        private static double most(List<Point> points) {
            return points.stream().mapToDouble(ProfileView::diagnoses).max().orElse(1);
        }

        private double x(double second) {
            return WIDTH * second / seconds;
        }

        private double y(double diagnoses) {
            return HEIGHT * (1 - (diagnoses - 1) / (most - 1));
        }

        /** A step-like line: what is thought stays until the next step is done. */
        String line(List<Point> points) {
            StringBuilder line = new StringBuilder();
            double before = diagnoses(points.get(0));
            for (Point point : points) {
                double now = diagnoses(point);
                line.append(pair(point.seconds(), before)).append(pair(point.seconds(), now));
                before = now;
            }
            return line.toString().trim();
        }

        private String pair(double second, double diagnoses) {
            return String.format(Locale.ROOT, "%.1f,%.1f ", x(second), y(diagnoses));
        }

        Map<String, Object> dot(Point point) {
            return Map.of("x", round(x(point.seconds())), "y", round(y(diagnoses(point))));
        }

        List<Map<String, Object>> ticks() {
            List<Map<String, Object>> ticks = new ArrayList<>();
            for (int n = 1; n <= most; n++) {
                ticks.add(Map.of("y", round(y(n)), "text", Integer.toString(n)));
            }
            return ticks;
        }

        List<Map<String, Object>> clocks() {
            List<Map<String, Object>> clocks = new ArrayList<>();
            int minutes = (int) (seconds / MINUTE);
            int every = Math.max(1, (minutes + 3) / 4);
            for (int minute = 0; minute <= minutes; minute += every) {
                clocks.add(Map.of("x", round(x(minute * MINUTE)), "text", minute + " min"));
            }
            return clocks;
        }

        private static String round(double number) {
            return String.format(Locale.ROOT, "%.1f", number);
        }
    }
}
