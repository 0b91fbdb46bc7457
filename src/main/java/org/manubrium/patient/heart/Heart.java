package org.manubrium.patient.heart;

import org.manubrium.patient.Body;

/**
 * Flows, pressures and times of one heart under one load. Volumes in millilitres a beat, times in milliseconds, pressures in
 * millimetres of mercury, areas in square centimetres.
 */
public record Heart(Body body, Pressures arteries, Load load) {
    private static final double CM_WATER = 1.36;

    public double of(String quantity) {
        return body.quantity(quantity);
    }

    public double number(String name) {
        return body.physiology().constant("heart", name);
    }

    /** A share that grows from 0 to 1 between two amounts. */
    static double rise(double amount, double from, double to) {
        return Math.min(1, Math.max(0, (amount - from) / (to - from)));
    }

    public Heart under(Load other) {
        return new Heart(body, arteries, other);
    }

    public double rate() {
        return arteries.rate() * load.rate();
    }

    /** From the first sound to the closing of the aortic valve of a healthy heart at this rate. */
    public double systole() {
        double faster = rate() - number("systole.rate");
        return Math.max(number("systole.least"), number("systole") - faster * number("systole.per-beat"));
    }

    double diastole() {
        return Math.max(number("diastole.least"), 60_000 / rate() - systole());
    }

    /** How much more the body asks for than at rest in health, as a factor. */
    double demand() {
        return of("output-demand") + number("demand.thyroid") * Math.max(0, of("thyroid-state"));
    }

    /** How much is left of the force of a healthy left ventricle, 0..1. */
    public double strength() {
        return Math.min(1, of("left-ventricle-contraction") / number("contraction"));
    }

    /** What the left ventricle sends forward into the body. */
    public double stroke() {
        double weakest = number("stroke.weakest");
        return number("stroke")
                * demand()
                * load.left()
                * Math.pow(load.resistance(), -number("stroke.resistance"))
                * (weakest + (1 - weakest) * strength())
                * (1 - number("stroke.fluid") * of("pericardial-fluid"));
    }

    /** What passes the aortic valve: what leaks back has to pass it again. */
    double throughAorticValve() {
        return stroke() / (1 - of("aortic-leak"));
    }

    /** A breath in fills a right heart that has reserve; a hole between the atria takes up the difference. */
    double rightLoad() {
        double answers = of("right-heart-reserve") * (1 - Math.min(1, of("atrial-shunt")));
        return 1 + (load.right() - 1) * (load.right() > 1 ? answers : 1);
    }

    double throughPulmonaryValve() {
        return number("stroke") * demand() * rightLoad() * (1 + of("atrial-shunt"));
    }

    double throughTricuspidValve() {
        return throughPulmonaryValve();
    }

    double throughMitralValve() {
        double shunted = 1 + defectFlow() * systole() / 1000 / number("stroke");
        return stroke() * shunted / (1 - of("mitral-leak"));
    }

    /** The pressure that a volume needs to pass an opening in so many milliseconds, by the formula of orifices. */
    static double gradient(double volume, double ms, double area, double factor) {
        double flow = volume / (ms / 1000) / (factor * area);
        return flow * flow;
    }

    double aorticGradient() {
        return gradient(throughAorticValve(), systole(), of("aortic-valve-area"), number("orifice.arterial"));
    }

    double pulmonaryGradient() {
        return gradient(throughPulmonaryValve(), systole(), of("pulmonary-valve-area"), number("orifice.arterial"));
    }

    /** The outflow below the valve narrows as the ventricle gets smaller. */
    double outflowGradient() {
        double smaller = 1 + number("outflow.by-size") * (1 - load.size());
        return number("outflow.gradient") * of("outflow-obstruction") * Math.max(number("outflow.least"), smaller);
    }

    double systolic() {
        return arteries.systolic() * load.pressure();
    }

    double leftVentricle() {
        return systolic() + aorticGradient() + outflowGradient();
    }

    double leftAtrium() {
        return of("left-filling-pressure");
    }

    double rightAtrium() {
        return of("right-atrial-pressure") / CM_WATER;
    }

    double pulmonaryArtery() {
        return of("pulmonary-pressure") * Math.pow(rightLoad(), number("pulmonary.by-load"));
    }

    public double rightVentricle() {
        return pulmonaryArtery() + pulmonaryGradient();
    }

    /** The mean pressure in the aorta while the ventricle fills. */
    double aortaInDiastole() {
        double pulse = arteries.systolic() - arteries.diastolic();
        return (arteries.diastolic() + number("aorta.run-off") * pulse) * load.pressure();
    }

    double pulmonaryArteryInDiastole() {
        return number("pulmonary.diastolic") * pulmonaryArtery();
    }

    /** Millilitres a second through a hole between the ventricles. */
    double defectFlow() {
        double across = Math.max(0, leftVentricle() - rightVentricle());
        return number("orifice.arterial")
                * of("ventricular-defect")
                * Math.sqrt(across)
                * Math.pow(load.resistance(), number("defect.by-resistance"))
                * Math.sqrt(load.left());
    }

    /** The area that the mitral valve can open to; a strong jet from the aorta holds one leaflet back. */
    double mitralArea() {
        return of("mitral-valve-area") * (1 - number("mitral.held-back") * of("aortic-leak"));
    }

    double tricuspidArea() {
        return number("tricuspid.area") * (1 - number("tricuspid.narrowing") * of("tricuspid-stenosis"));
    }

    /** The tricuspid ring widens, and leaks, where the right ventricle fails or works against a high pressure. */
    double tricuspidLeak() {
        double fails = (1 - of("right-heart-reserve"))
                * rise(of("right-atrial-pressure"), number("s3.right-from"), number("s3.right-to"));
        double works = rise(of("pulmonary-pressure"), number("tricuspid.works-from"), number("tricuspid.works-to"));
        return Math.min(1, of("tricuspid-leak") + number("tricuspid.widened") * Math.max(fails, works));
    }

    /** When in systole slack leaflets give way, as a share of it: the smaller the ventricle, the earlier. */
    public double giveWay() {
        double at = number("prolapse.at") + number("prolapse.by-size") * (load.size() - 1);
        return Math.min(number("prolapse.latest"), Math.max(number("prolapse.earliest"), at));
    }

    /** The share of the atrial beat that still reaches the ventricle at its end of filling, 0..1. */
    public double atrialKick() {
        return of("atrial-contraction") * (1 - of("atrioventricular-dissociation"));
    }

    /** Stiffness of the left ventricle, which grows a little with age. */
    public double stiffness() {
        double old = Math.max(0, body.person().age() - number("stiffness.age")) * number("stiffness.per-year");
        return of("left-ventricle-stiffness") + old;
    }

    /** How far fluid or overfilled lung in front of the heart damps all it does, dB. */
    public double cover() {
        double lung = (of("lung.right.lower-front.trapped") + of("lung.left.lower-front.trapped")) / 2;
        return number("cover.fluid") * of("pericardial-fluid") + number("cover.lung") * lung;
    }

    /** How far a chest wall thicker than the usual damps all the heart does, dB; positive if it is thin. */
    double wall() {
        double usual = body.physiology().quantity("chest.wall").normal();
        return number("cover.wall") * (of("chest.wall") - usual);
    }
}
