package org.evenfall.trays;

/** What the field CV means for the job ({@link #of}). */
public enum EvennessVerdict {
    /** The field CV is at most 15 % with a chance of at least 90 %. */
    EVEN,
    /** With a chance of at least 50 and below 90 %: one more run into the same trays would tell. */
    PROBABLY_EVEN,
    /** With a chance below 50 %: adjust before spreading. */
    NOT_EVEN_ENOUGH,
    /** The median of the field CV is above 20 %, whatever the chance: no spreading with these settings. */
    DO_NOT_SPREAD;

    /** Smallest chance of at most 15 % that is called even. Assumption: wrong at most once in ten. */
    public static final double EVEN_PROBABILITY = 0.90;

    /** Smallest chance of at most 15 % that is called probably even. Exact: more likely than not. */
    public static final double PROBABLY_EVEN_PROBABILITY = 0.50;

    /**
     * The verdict on an estimate of the field CV.
     *
     * @param medianPercent median of the estimate, %, at least 0
     * @param probabilityAtMost15 chance that the field CV is at most {@link CvLimits#FIELD_PERCENT}, 0 to 1
     * @throws IllegalArgumentException when a value is out of its range
     */
    public static EvennessVerdict of(double medianPercent, double probabilityAtMost15) {
        if (!(medianPercent >= 0) || !(probabilityAtMost15 >= 0 && probabilityAtMost15 <= 1)) {
            throw new IllegalArgumentException("medianPercent at least 0, probabilityAtMost15 from 0 to 1: "
                    + medianPercent + ", " + probabilityAtMost15);
        }
        if (medianPercent > CvLimits.STRIPES_PERCENT) {
            return DO_NOT_SPREAD;
        }
        if (probabilityAtMost15 >= EVEN_PROBABILITY) {
            return EVEN;
        }
        return probabilityAtMost15 >= PROBABLY_EVEN_PROBABILITY ? PROBABLY_EVEN : NOT_EVEN_ENOUGH;
    }
}
