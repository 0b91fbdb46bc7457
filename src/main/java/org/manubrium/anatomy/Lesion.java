package org.manubrium.anatomy;

/** What is lost at one site: 0 nothing, 1 everything; and how long ago. */
public record Lesion(Site site, double loss, Onset onset) {
    public Lesion {
        if (!(loss >= 0 && loss <= 1)) {
            throw new IllegalArgumentException("loss of " + site + " must lie in 0..1, found " + loss);
        }
    }

    public Lesion mirrored() {
        return new Lesion(site.mirrored(), loss, onset);
    }

    public Lesion withLoss(double newLoss) {
        return new Lesion(site, newLoss, onset);
    }
}
