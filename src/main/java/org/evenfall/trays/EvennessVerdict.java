package org.evenfall.trays;

/**
 * What a coefficient of variation means for the job. The limits are defined here only.
 *
 * <p>Source: at most 15 % is the field limit of Defra RB209 (Nutrient Management Guide) and of a national certification
 * scheme for nitrogen. Assumption: 10 and 20 %, after the farm press (10 to 15 % acceptable; stripes begin to show above
 * 20 %).
 */
public enum EvennessVerdict {
    /** At most 10 %: keep the settings. */
    GOOD(10),
    /** Above 10 and at most 15 %: may be spread. */
    ACCEPTABLE(15),
    /** Above 15 and at most 20 %: adjust before spreading. */
    ADJUST(20),
    /** Above 20 %. */
    DO_NOT_SPREAD(Double.POSITIVE_INFINITY);

    private final double limitPercent;

    EvennessVerdict(double limitPercent) {
        this.limitPercent = limitPercent;
    }

    /** The highest CV with this verdict, %; infinite for {@link #DO_NOT_SPREAD}. */
    public double limitPercent() {
        return limitPercent;
    }

    /**
     * The verdict on a CV.
     *
     * @param cvPercent coefficient of variation, %, at least 0
     * @throws IllegalArgumentException for a negative CV or NaN
     */
    public static EvennessVerdict of(double cvPercent) {
        if (!(cvPercent >= 0)) {
            throw new IllegalArgumentException("cvPercent must be at least 0: " + cvPercent);
        }
        for (EvennessVerdict verdict : values()) {
            if (cvPercent <= verdict.limitPercent) {
                return verdict;
            }
        }
        throw new IllegalStateException("no limit is infinite");
    }
}
