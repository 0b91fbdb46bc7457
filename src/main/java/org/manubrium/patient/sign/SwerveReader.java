package org.manubrium.patient.sign;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.manubrium.anatomy.Side;
import org.manubrium.appearance.Appearance;
import org.manubrium.examination.Manoeuvre;
import org.manubrium.examination.Probe;
import org.manubrium.patient.Body;
import org.manubrium.patient.Finding;

/**
 * What is moved by two halves and leaves the midline when one is weaker. The halves of tongue and jaw push towards the
 * other side, so that they go to the weak one; the halves of the palate pull towards their own.
 */
final class SwerveReader implements SignReader {
    static final String STRAIGHT = "straight";

    /** The mean strength with one half lost. */
    private static final double HALF = 0.5;

    private record Part(boolean pulls, String sign, String moves, String lies) {}

    private static final Map<String, Part> PARTS = Map.of(
            "tongue", new Part(false, "tongue-out", "tip comes out by", "tip lies to the right of the middle by"),
            "palate", new Part(true, "palate", "palate rises by", "uvula moves to the right by"),
            "jaw", new Part(false, "jaw-open", "jaw opens by", "lower teeth move to the right by"));

    @Override
    public String name() {
        return "swerve";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        String part = manoeuvre.part();
        if (mean(body, part) < body.physiology().constant("swerve.still")) {
            return new Finding.Seen("no-movement");
        }
        double right = toTheRight(body, part);
        if (Math.abs(right) < body.physiology().constant("swerve.seen." + part)) {
            return new Finding.Seen(STRAIGHT);
        }
        return new Finding.Seen("to-" + (right > 0 ? Side.RIGHT : Side.LEFT).word());
    }

    private static double mean(Body body, String part) {
        return (CranialMotor.strength(body, part, Side.RIGHT) + CranialMotor.strength(body, part, Side.LEFT)) / 2;
    }

    /** Millimetres from the midline; less than nought to the left. */
    private static double toTheRight(Body body, String part) {
        double stronger = CranialMotor.strength(body, part, Side.RIGHT) - CranialMotor.strength(body, part, Side.LEFT);
        double pulled = part(part).pulls() ? stronger : -stronger;
        var variation = body.person().variation();
        double own = (variation.of(part, Side.RIGHT) - variation.of(part, Side.LEFT)) / 2;
        return body.physiology().constant("swerve.most." + part) * pulled
                + body.physiology().constant("swerve.own." + part) * own;
    }

    private static Part part(String name) {
        Part part = PARTS.get(name);
        if (part == null) {
            throw new IllegalArgumentException("nothing leaves the midline called \"" + name + "\"");
        }
        return part;
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        Part part = part(manoeuvre.part());
        double moved = moved(body, manoeuvre.part());
        double far = body.physiology().constant("swerve.far." + manoeuvre.part()) * moved;
        double right = toTheRight(body, manoeuvre.part()) * Math.min(1, 2 * moved);
        List<Appearance.Measure> seen = new ArrayList<>();
        seen.add(new Appearance.Measure(part.moves(), rounded(far), "mm"));
        seen.add(new Appearance.Measure(part.lies(), rounded(right), "mm"));
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            seen.addAll(half(body, manoeuvre.part(), side));
        }
        return new Appearance(part.sign(), List.of(), List.copyOf(seen), "");
    }

    /** The share of its way that the whole goes: nothing from where no movement is read, most of it with one half. */
    private static double moved(Body body, String part) {
        double mean = mean(body, part);
        double still = body.physiology().constant("swerve.still");
        double one = body.physiology().constant("swerve.one-half");
        return mean < HALF
                ? Math.max(0, one * (mean - still) / (HALF - still))
                : one + (1 - one) * (mean - HALF) / (1 - HALF);
    }

    /** How far one half by itself goes: no farther than it can, and not where nothing moves. */
    private static double arch(Body body, String part, Side side) {
        double mean = mean(body, part);
        double strength = CranialMotor.strength(body, part, side);
        return mean == 0 ? 0 : Math.min(1, strength * moved(body, part) / mean);
    }

    /** What is seen of one half by itself. */
    private static List<Appearance.Measure> half(Body body, String part, Side side) {
        return switch (part) {
            case "palate" ->
                List.of(new Appearance.Measure(
                        side.word() + " arch rises by",
                        rounded(body.physiology().constant("swerve.far.palate") * arch(body, part, side)),
                        "mm"));
            case "tongue" ->
                List.of(new Appearance.Measure(
                        side.word() + " half has sunk by", rounded(MouthLooks.furrow(body, side)), "mm"));
            default -> List.of();
        };
    }

    private static double rounded(double amount) {
        return Math.round(amount * 10) / 10.0;
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        List<Strand> found = new ArrayList<>();
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            found.addAll(CranialMotor.strands(body, manoeuvre.part(), side));
        }
        return List.copyOf(found);
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return finding.equals(new Finding.Seen(STRAIGHT));
    }
}
