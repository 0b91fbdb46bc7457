package org.manubrium.patient.heart;

import static org.manubrium.patient.heart.JetKind.AORTIC_LEAK;
import static org.manubrium.patient.heart.JetKind.AORTIC_OUT;
import static org.manubrium.patient.heart.JetKind.COARCTATION;
import static org.manubrium.patient.heart.JetKind.DUCT;
import static org.manubrium.patient.heart.JetKind.MITRAL_IN;
import static org.manubrium.patient.heart.JetKind.MITRAL_LEAK;
import static org.manubrium.patient.heart.JetKind.OUTFLOW;
import static org.manubrium.patient.heart.JetKind.PULMONARY_LEAK;
import static org.manubrium.patient.heart.JetKind.PULMONARY_OUT;
import static org.manubrium.patient.heart.JetKind.TRICUSPID_IN;
import static org.manubrium.patient.heart.JetKind.TRICUSPID_LEAK;
import static org.manubrium.patient.heart.JetKind.VENTRICULAR_DEFECT;

import java.util.List;

/** Every jet of a heart, the silent ones too. */
public record Jets(Heart heart) {

    private record All(List<Jet> jets) {}

    public static List<Jet> of(Heart heart) {
        return heart.body()
                .once(heart, All.class, () -> new All(new Jets(heart).all()))
                .jets();
    }

    private List<Jet> all() {
        return List.of(
                aorticOut(),
                outflow(),
                pulmonaryOut(),
                coarctation(),
                mitralLeak(),
                tricuspidLeak(),
                ventricularDefect(),
                aorticLeak(),
                pulmonaryLeak(),
                mitralIn(),
                tricuspidIn(),
                duct());
    }

    private double of(String quantity) {
        return heart.of(quantity);
    }

    private double number(String name) {
        return heart.number(name);
    }

    private double perSecond(double volume) {
        return volume / (heart.systole() / 1000);
    }

    private double perSecondOfFilling(double volume) {
        return volume / (heart.diastole() / 1000);
    }

    /** A rough or quivering valve is heard at a flow that a smooth one lets pass in silence. */
    private Jet aorticOut() {
        double rough = number("jet.rough") * of("aortic-valve-roughness");
        double quivers = number("jet.quiver") * of("outflow-vibration");
        return ejection(AORTIC_OUT, heart.aorticGradient(), perSecond(heart.throughAorticValve()), 0)
                .louder(Math.max(rough, quivers));
    }

    private Jet outflow() {
        return ejection(
                OUTFLOW, heart.outflowGradient(), perSecond(heart.stroke()), number("ejection.below-valve-later"));
    }

    private Jet pulmonaryOut() {
        return ejection(PULMONARY_OUT, heart.pulmonaryGradient(), perSecond(heart.throughPulmonaryValve()), 0);
    }

    private Jet coarctation() {
        double narrow = of("aortic-coarctation");
        double gradient = number("coarctation.gradient") * narrow;
        Jet jet = ejection(COARCTATION, gradient, perSecond(heart.stroke()) * narrow, number("coarctation.later"));
        return new Jet(jet.kind(), jet.level(), gradient, jet.from(), number("coarctation.until"), jet.peak());
    }

    /** The steeper the pressure that is needed, the later the peak. */
    private Jet ejection(JetKind kind, double gradient, double flow, double later) {
        double late = Heart.rise(gradient, number("ejection.mild"), number("ejection.severe"));
        double peak = number("ejection.peak-early")
                + late * (number("ejection.peak-late") - number("ejection.peak-early"))
                + later;
        return Jet.of(heart, kind, gradient, flow, number("ejection.from") + later, number("ejection.to"), peak);
    }

    /** Slack leaflets leak only once they give way, unless they leak much. */
    private Jet mitralLeak() {
        double slack = of("mitral-slack");
        double smaller =
                1 + number("prolapse.leak-by-size") * slack * (1 - heart.load().size());
        double leak = Math.min(number("leak.most"), of("mitral-leak") * smaller);
        double holds = 1 - Heart.rise(leak, number("prolapse.holds"), number("prolapse.gives"));
        double from = slack >= number("prolapse.slack") ? heart.giveWay() * holds : 0;
        double volume = regurgitant(leak) * Math.pow(heart.load().resistance(), number("leak.by-resistance"));
        double flow = perSecond(volume) / (1 - (from > 0 ? number("prolapse.at") * holds : 0));
        double peak = from > 0 ? 1 : number("leak.peak");
        return Jet.of(heart, MITRAL_LEAK, heart.leftVentricle() - heart.leftAtrium(), flow, from, 1, peak);
    }

    private double regurgitant(double leak) {
        return leak / (1 - leak) * number("stroke") * heart.load().left();
    }

    private Jet tricuspidLeak() {
        double flow = heart.tricuspidLeak() * number("tricuspid.flow") * rightSide();
        double gradient = heart.rightVentricle() - heart.rightAtrium();
        return Jet.of(heart, TRICUSPID_LEAK, gradient, flow, 0, 1, number("leak.peak"));
    }

    /** A leak of the right side grows with its filling. */
    private double rightSide() {
        return Math.pow(heart.rightLoad(), number("leak.by-right-load"));
    }

    private Jet ventricularDefect() {
        double gradient = heart.leftVentricle() - heart.rightVentricle();
        return Jet.of(heart, VENTRICULAR_DEFECT, gradient, heart.defectFlow(), 0, 1, number("leak.peak"));
    }

    private Jet aorticLeak() {
        double volume =
                regurgitant(of("aortic-leak")) * Math.pow(heart.load().resistance(), number("leak.by-resistance"));
        double gradient = heart.aortaInDiastole() - heart.leftAtrium();
        double to = 1 - number("leak.shortened") * Heart.rise(heart.leftAtrium(), 15, 30);
        return Jet.of(heart, AORTIC_LEAK, gradient, perSecondOfFilling(volume), 0, to, 0);
    }

    private Jet pulmonaryLeak() {
        double flow = perSecondOfFilling(of("pulmonary-leak") * number("stroke") * rightSide());
        double gradient = heart.pulmonaryArteryInDiastole() - heart.rightAtrium();
        double to = number("pulmonary-leak.to") + (1 - number("pulmonary-leak.to")) * Heart.rise(gradient, 8, 25);
        return Jet.of(heart, PULMONARY_LEAK, gradient, flow, 0, to, 0);
    }

    private Jet mitralIn() {
        return filling(MITRAL_IN, heart.throughMitralValve(), heart.mitralArea());
    }

    private Jet tricuspidIn() {
        return filling(TRICUSPID_IN, heart.throughTricuspidValve(), heart.tricuspidArea());
    }

    /** The tighter the valve, the longer the rumble lasts. */
    private Jet filling(JetKind kind, double volume, double area) {
        double gradient = Heart.gradient(volume, heart.diastole(), area, number("orifice.filling"));
        double tight = Heart.rise(gradient, number("filling.mild"), number("filling.severe"));
        double to = number("filling.to-mild") + tight * (1 - number("filling.to-mild"));
        return Jet.of(heart, kind, gradient, perSecondOfFilling(volume), number("filling.from"), to, 0);
    }

    private Jet duct() {
        double gradient = heart.aortaInDiastole() - heart.pulmonaryArteryInDiastole();
        double flow = number("orifice.arterial") * of("arterial-duct") * Math.sqrt(Math.max(0, gradient));
        return Jet.of(heart, DUCT, gradient, flow, 0, 1, number("duct.peak"));
    }
}
