package org.manubrium.patient.heart;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Sounds beside the first and the second: of filling, of valves that open with a snap, of metal. */
public record ExtraSounds(Heart heart) {
    private static final Map<String, Set<String>> QUANTITIES = Map.ofEntries(
            Map.entry("third-right", Set.of("right-heart-reserve")),
            Map.entry("fourth-left", Set.of("left-ventricle-stiffness")),
            Map.entry("fourth-right", Set.of("right-ventricle-stiffness")),
            Map.entry("opening-snap", Set.of("mitral-valve-area")),
            Map.entry("aortic-click", Set.of("aortic-valve-doming")),
            Map.entry("pulmonary-click", Set.of("pulmonary-valve-doming")),
            Map.entry("mid-click", Set.of("mitral-slack")),
            Map.entry("knock", Set.of("pericardial-restraint")),
            Map.entry("metal-aortic", Set.of("mechanical-aortic-valve")),
            Map.entry("metal-mitral", Set.of("mechanical-mitral-valve")));

    /** The quantities from which a sound comes. */
    public Set<String> quantities(String id) {
        if (id.equals("third-left")) {
            boolean weak = weakAndFull() >= Math.max(volume(), shunted());
            return weak
                    ? Set.of("left-ventricle-contraction", "left-filling-pressure")
                    : Set.of("mitral-leak", "ventricular-defect");
        }
        return QUANTITIES.getOrDefault(id, Set.of());
    }

    private double number(String name) {
        return heart.number(name);
    }

    private double of(String quantity) {
        return heart.of(quantity);
    }

    /** The low sounds of filling. */
    public List<Thud> low() {
        double closes = new ValveSounds(heart).aorticAt();
        double kick = -number("s4.before") - of("pr-interval") + number("s1.usual-lead");
        return List.of(
                thud("third-left", closes + number("s3.after"), thirdLeft()),
                thud("third-right", closes + number("s3.after"), thirdRight()),
                thud("fourth-left", kick, fourth(heart.stiffness(), of("mitral-valve-area") / number("s3.free-area"))),
                thud("fourth-right", kick, fourth(of("right-ventricle-stiffness"), 1)));
    }

    /** The sharp ones. */
    public List<Thud> sharp() {
        ValveSounds valves = new ValveSounds(heart);
        double closes = valves.aorticAt();
        double click = number("click.after");
        double breath = number("click.breath") * (heart.rightLoad() - 1);
        return List.of(
                thud("opening-snap", closes + snapAfter(), opens()),
                thud("aortic-click", click, of("aortic-valve-doming")),
                softer(thud("pulmonary-click", click, of("pulmonary-valve-doming")), breath),
                thud("mid-click", heart.giveWay() * heart.systole(), of("mitral-slack")),
                thud("knock", closes + number("knock.after"), of("pericardial-restraint")),
                thud("metal-aortic", closes, of("mechanical-aortic-valve")),
                thud("metal-mitral", 0, of("mechanical-mitral-valve")));
    }

    private static Thud softer(Thud thud, double decibel) {
        return new Thud(thud.id(), thud.ms(), thud.level() - decibel);
    }

    /** A sound that there is so much of, 0..1: full at 1, gone at 0. */
    private Thud thud(String id, double ms, double amount) {
        double share = Math.min(1, Math.max(0, amount));
        double full = number("sound." + id + ".level");
        double level = share <= 0 ? Thud.SILENT : full + number("sound.span") * (share - 1) + heart.cover();
        return new Thud(id, ms, level);
    }

    /** A ventricle that fills fast and can take no more: full and weak, or with a large volume to take, or young. */
    private double thirdLeft() {
        double taken = Math.max(Math.max(weakAndFull(), volume()), Math.max(shunted(), young()));
        double open = Math.min(1, heart.mitralArea() / number("s3.free-area"));
        return taken * open * (1 - of("pericardial-restraint")) * (1 - of("pericardial-fluid"));
    }

    private double weakAndFull() {
        double full = Heart.rise(heart.leftAtrium(), number("s3.full-from"), number("s3.full-to"));
        return full * Heart.rise(1 - heart.strength(), number("s3.weak-from"), number("s3.weak-to"));
    }

    private double volume() {
        return Heart.rise(of("mitral-leak"), number("s3.leak-from"), number("s3.leak-to"));
    }

    private double shunted() {
        double flow = heart.throughMitralValve() / heart.stroke() * (1 - of("mitral-leak"));
        return Heart.rise(flow, number("s3.flow-from"), number("s3.flow-to"));
    }

    /** In the young a third sound belongs to health in some. */
    private double young() {
        double youth =
                Heart.rise(number("s3.young-until") - heart.body().person().age(), 0, number("s3.young-span"));
        return number("s3.young")
                * youth
                * Math.max(0, heart.body().person().variation().of("third-sound"));
    }

    private double thirdRight() {
        double full = Heart.rise(heart.of("right-atrial-pressure"), number("s3.right-from"), number("s3.right-to"));
        return (1 - of("right-heart-reserve"))
                * full
                * heart.load().right()
                * (1 - of("pericardial-restraint"))
                * (1 - of("pericardial-fluid"));
    }

    private double fourth(double stiffness, double open) {
        return Math.min(1, stiffness / number("s4.stiff")) * heart.atrialKick() * Math.min(1, open);
    }

    /** A narrow valve that is still pliable opens with a snap. */
    private double opens() {
        double narrow = Heart.rise(number("s1.narrow-from") - of("mitral-valve-area"), 0, number("s1.narrow-span"));
        return narrow * of("mitral-pliability");
    }

    /** The higher the pressure behind it, the sooner the valve opens. */
    public double snapAfter() {
        double sooner = number("snap.by-pressure") * (heart.leftAtrium() - number("snap.pressure"));
        return Math.max(number("snap.earliest"), Math.min(number("snap.latest"), number("snap.usual") - sooner));
    }
}
