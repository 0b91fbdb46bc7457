package org.manubrium.patient.sign;

import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Side;
import org.manubrium.patient.Body;
import org.manubrium.patient.Physiology;

/**
 * One iris: how wide it stands and how fast it moves, whatever light comes in.
 *
 * @param open millimetres with nothing to narrow it
 * @param resting millimetres with neither light nor near to narrow it: less than {@code open} where narrowing is unchecked
 * @param light the share of the narrowing to light that reaches it, 0..1
 * @param near the same for near; more than 1 where fibres have grown back astray
 * @param unsupported the share of the sympathetic drive that is lost, 0..1
 * @param offset millimetres by which this eye differs in health
 */
record Iris(
        PupilSize size,
        Fixed fixed,
        double open,
        double resting,
        double light,
        double near,
        double unsupported,
        double offset,
        double secondsNear,
        double secondsWide) {

    static Iris of(Body body, PupilSize size, Side eye) {
        Physiology numbers = body.physiology();
        PupilPaths paths = new PupilPaths(body.anatomy(), eye);
        double nerve = body.conduction(Pathway.series(paths.drive(), paths.sphincter()));
        double denervated = 1 - body.conduction(paths.ciliary());
        Regrowth regrowth = Regrowth.of(body, paths.ciliary());
        double astray = nerve * denervated * regrowth.grown();
        double direct = nerve * (1 - denervated);
        double unsupported = 1 - body.conduction(paths.widening());
        double open = size.dark() + numbers.constant("pupil.open-extra");
        double small = shrink(open, nerve * denervated * regrowth.shrunk(), size, numbers, "pupil.shrunk");
        double unchecked = direct * (1 - body.conduction(paths.inhibition()));
        return new Iris(
                size,
                Fixed.of(numbers),
                open,
                shrink(small, unchecked, size, numbers, "pupil.unchecked"),
                body.conduction(paths.lightRelay()) * (direct + astray * numbers.constant("pupil.tonic.light")),
                body.conduction(paths.nearDrive()) * (direct + astray * numbers.constant("pupil.tonic.near")),
                unsupported,
                numbers.constant("pupil.unequal") * body.person().variation().of("pupil-size", eye),
                mix(numbers, "pupil.seconds.near", "pupil.seconds.near-tonic", astray),
                Math.max(
                        mix(numbers, "pupil.seconds.wide", "pupil.seconds.wide-tonic", astray),
                        mix(numbers, "pupil.seconds.wide", "pupil.seconds.wide-unsupported", unsupported)));
    }

    private static double shrink(double from, double share, PupilSize size, Physiology numbers, String to) {
        return from + share * (size.dark() * numbers.constant(to) - from);
    }

    private static double mix(Physiology numbers, String usual, String changed, double share) {
        return numbers.constant(usual) * (1 - share) + numbers.constant(changed) * share;
    }

    /**
     * Where this pupil comes to rest, in millimetres.
     *
     * @param healthy where a healthy pupil would rest in the same light
     * @param nearShare the share of its size by which looking near narrows a healthy pupil; 0 for far
     */
    double target(double healthy, double nearShare) {
        double narrowed = resting * (1 - light * (1 - healthy / open));
        double droop = fixed.droopLight + size.share(narrowed) * (fixed.droopDark - fixed.droopLight);
        double supported = narrowed * (1 - unsupported * droop) * (1 - near * nearShare);
        return Math.max(fixed.least, Math.min(fixed.most, supported + offset));
    }

    /** The next size, a step of time further on the way to the target; narrowing is quicker than widening. */
    double step(double now, double target, boolean lookingNear, double seconds) {
        double narrowing = lookingNear ? secondsNear : fixed.secondsNarrow;
        double lag = target < now ? narrowing : secondsWide;
        return now + (target - now) * (1 - Math.exp(-seconds / lag));
    }

    /** What is the same in every iris, read once: a simulation asks a thousand times. */
    record Fixed(double least, double most, double droopLight, double droopDark, double secondsNarrow) {

        static Fixed of(Physiology numbers) {
            return new Fixed(
                    numbers.constant("pupil.least"),
                    numbers.constant("pupil.most"),
                    numbers.constant("pupil.unsupported.light"),
                    numbers.constant("pupil.unsupported.dark"),
                    numbers.constant("pupil.seconds.narrow"));
        }
    }
}
