package org.manubrium.web.review;

import java.util.Locale;

/** Per cents as they are written on a page. */
final class Percent {
    private static final int WHOLE = 100;
    private static final int TENTHS = 10;

    private Percent() {}

    /** "66.7 %". */
    static String oneDecimal(double percent) {
        return String.format(Locale.UK, "%.1f %%", percent);
    }

    /** A credit 0..1 as a whole number of per cent. */
    static long whole(double credit) {
        return Math.round(credit * WHOLE);
    }

    /** The step of the ramp, 0..10. */
    static long heat(double credit) {
        return Math.round(credit * TENTHS);
    }
}
