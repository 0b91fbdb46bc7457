package org.manubrium.marking;

/**
 * What an attempt's profile measures, each 0..1, handed to the Marker as numbers.
 *
 * @param thoroughness how much was done of what belongs to every examination of the systems on which the case turns
 * @param economy how near time and moves come to the best order of the same steps
 * @param information how much of what an efficient examiner learns was learnt
 */
public record Measured(double thoroughness, double economy, double information) {
    /** Nothing has been measured. */
    public static final Measured NOTHING = new Measured(0, 0, 0);

    public Measured {
        for (double part : new double[] {thoroughness, economy, information}) {
            if (!(part >= 0 && part <= 1)) {
                throw new IllegalArgumentException("expected 0..1, found " + part);
            }
        }
    }
}
