package org.manubrium.patient.trunk;

import java.util.List;
import java.util.stream.Stream;

/** The largest lymph node of one group on one side. */
public record Node(Spot spot, String group) {
    private static final String OWNER = "node.@side.";

    /** The ids of what is known of a node, "@side" still to be filled in. */
    public static String[] quantities(String group) {
        String owner = OWNER + group;
        return new String[] {
            owner + ".size", owner + ".hard", owner + ".held", owner + ".matted", owner + ".sore",
        };
    }

    /** Those of them that say how it feels, whatever its size. */
    public static List<String> textures(String group) {
        return Stream.of("hard", "held", "matted", "sore")
                .map(kind -> OWNER + group + "." + kind)
                .toList();
    }

    private double of(String kind) {
        return spot.of(OWNER + group + "." + kind);
    }

    private boolean plainly(String kind) {
        return of(kind) >= spot.constant("belly.plain");
    }

    /** How wide it is to a finger, mm; 0 where it is too small to be felt. */
    public double felt() {
        double size = of("size");
        return size >= spot.constant("node.felt") ? size : 0;
    }

    private double ifFelt(double amount) {
        return felt() > 0 ? amount : 0;
    }

    /** How far it can be slid, mm. */
    public double slides() {
        return ifFelt(10 * (1 - 0.95 * of("held")));
    }

    /** How far it gives under a firm finger, mm. */
    public double gives() {
        return ifFelt(Math.max(0.2, 3.2 * (1 - of("hard"))));
    }

    public double others() {
        return ifFelt(Math.rint(Math.max(0, felt() - spot.constant("node.one-mm")) / 6 + 3 * of("matted")));
    }

    public double joined() {
        return Math.rint(ifFelt(3 * of("matted")));
    }

    public double pain() {
        return ifFelt(of("sore"));
    }

    /** The word for its feel. */
    public String feel() {
        if (felt() <= 0) {
            return "none";
        }
        if (plainly("matted")) {
            return "matted";
        }
        if (plainly("held")) {
            return "fixed";
        }
        if (of("hard") >= spot.constant("node.hard")) {
            return "hard";
        }
        if (plainly("sore")) {
            return "painful";
        }
        return of("hard") >= spot.constant("node.rubbery") ? "rubbery" : "slides-soft";
    }
}
