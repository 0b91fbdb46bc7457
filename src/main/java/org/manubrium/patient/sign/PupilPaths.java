package org.manubrium.patient.sign;

import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Segment;
import org.manubrium.anatomy.Side;

/** The pathways of one eye: light in, the drives that narrow and widen its pupil, and those that raise its lid. */
final class PupilPaths {
    private final Anatomy anatomy;
    private final Side eye;

    PupilPaths(Anatomy anatomy, Side eye) {
        this.anatomy = anatomy;
        this.eye = eye;
    }

    /** From the retina to the midbrain of both sides: what is lost here dims the light for both pupils alike. */
    Pathway lightIn() {
        return tract("light afferent");
    }

    /** In the midbrain, from both sides to the nucleus of this eye: what is lost here weakens the drive, not the light. */
    Pathway lightRelay() {
        return tract("light relay");
    }

    /** From the midbrain by the third nerve to the orbit. */
    Pathway drive() {
        return tract("pupil constriction");
    }

    /** The ciliary ganglion and its nerves: where a lesion is followed by regrowth. */
    Pathway ciliary() {
        return tract("ciliary fibres");
    }

    Pathway sphincter() {
        return tract("iris sphincter");
    }

    /** What starts the narrowing for near; it reaches the midbrain by a way of its own. */
    Pathway nearDrive() {
        return tract("near constriction");
    }

    /** What holds the narrowing back. */
    Pathway inhibition() {
        return tract("pupil inhibition");
    }

    /** The sympathetic path: brain, cord, chest, neck, eye. */
    Pathway widening() {
        return tract("pupil dilatation");
    }

    Pathway lidLevator() {
        return tract("lid levator");
    }

    Pathway lidSympathetic() {
        return tract("lid sympathetic");
    }

    /** No row of these tracts asks which segment or part of the body is served. */
    private Pathway tract(String name) {
        return anatomy.tract(name, eye, Segment.T1, "");
    }
}
