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
import org.manubrium.patient.Physiology;

/** Power of the face, the jaw, the tongue and the neck, one movement at a time; both sides are seen moving. */
final class CranialPowerReader implements SignReader {
    private static final double OWN = 0.06;

    private static final String EYES = "eye-closure";

    /** What moves, in which unit, whether the hand feels it push, and the drawing that shows it. */
    private record Part(String moves, String unit, boolean pushes, String sign) {
        boolean ofTheFace() {
            return sign.startsWith("face-");
        }
    }

    private static final Map<String, Part> PARTS = Map.of(
            "brow",
            new Part("brow rises by", "mm", false, "face-brow"),
            EYES,
            new Part("lids come together by", "mm", false, "face-eyes"),
            "teeth",
            new Part("corner of the mouth moves out by", "mm", false, "face-teeth"),
            "cheek",
            new Part("air held behind the cheek", "%", false, "face-cheeks"),
            "bite",
            new Part("muscle over the jaw thickens by", "mm", true, "jaw-clench"),
            "tongue",
            new Part("cheek pushed out by", "mm", true, "tongue-push"),
            "shrug",
            new Part("shoulder rises by", "mm", true, "shoulders"),
            "turn",
            new Part("chin turns this way by", "degrees", true, "head-turn"));

    @Override
    public String name() {
        return "cranial-power";
    }

    @Override
    public Finding find(Body body, Manoeuvre manoeuvre, Probe probe) {
        return new Finding.Graded(
                "cranial-power",
                CranialMotor.strength(body, manoeuvre.part(), probe.item().side()));
    }

    @Override
    public Appearance show(Body body, Manoeuvre manoeuvre, Probe probe) {
        Part part = PARTS.get(manoeuvre.part());
        if (part == null) {
            throw new IllegalArgumentException("no movement of the head is called \"" + manoeuvre.part() + "\"");
        }
        List<Appearance.Measure> seen = new ArrayList<>();
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            seen.add(moved(body, manoeuvre.part(), part, side));
        }
        if (part.pushes()) {
            double most = body.physiology().constant("face.most.push." + manoeuvre.part());
            double push = most * used(body, manoeuvre.part(), probe.item().side());
            seen.add(new Appearance.Measure("pushes the examiner's hand with", Math.rint(push), "N"));
        }
        if (part.ofTheFace()) {
            seen.addAll(new FaceAtRest(body, Side.RIGHT).measures());
            seen.addAll(new FaceAtRest(body, Side.LEFT).measures());
        }
        seen.addAll(Complexion.of(body));
        return new Appearance(part.sign(), List.of(), List.copyOf(seen), "");
    }

    private static Appearance.Measure moved(Body body, String name, Part part, Side side) {
        Side moves = name.equals("tongue") ? side.opposite() : side;
        double amount = rounded(most(body, name, part, moves) * used(body, name, moves));
        return new Appearance.Measure(side.word() + " " + part.moves(), amount, part.unit());
    }

    /** Lids come together from as far as they stand open; everything else has a range of its own, save a share. */
    private static double most(Body body, String name, Part part, Side side) {
        if (name.equals(EYES)) {
            return new FaceAtRest(body, side).lids();
        }
        double own = part.unit().equals("%")
                ? 1
                : 1 + OWN * body.person().variation().of("face", side);
        return body.physiology().constant("face.most." + name) * own;
    }

    /** What is seen is full from where no weakness would be read, and nothing up to where no movement would be. */
    private static double used(Body body, String part, Side side) {
        Physiology numbers = body.physiology();
        double none = numbers.constant("face.none");
        double seen = (CranialMotor.strength(body, part, side) - none) / (numbers.constant("face.full") - none);
        return Math.max(0, Math.min(1, seen));
    }

    private static double rounded(double amount) {
        return Math.round(amount * 10) / 10.0;
    }

    @Override
    public List<Strand> strands(Body body, Manoeuvre manoeuvre, Probe probe) {
        return CranialMotor.strands(body, manoeuvre.part(), probe.item().side());
    }

    @Override
    public boolean normal(Body body, Manoeuvre manoeuvre, Probe probe, Finding finding) {
        return ((Finding.Graded) finding).amount() >= body.physiology().constant("face.full");
    }
}
