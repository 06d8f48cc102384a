package org.evenfall.trays;

/** The published limits of a coefficient of variation, defined here only. They are meant for numbers like the tray CV. */
public final class CvLimits {

    /** Good, %. Assumption: after the farm press, which calls 10 to 15 % acceptable. */
    public static final double GOOD_PERCENT = 10;

    /**
     * Highest CV of a field that may be spread, %. Source: Defra RB209 (Nutrient Management Guide); a national
     * certification scheme for nitrogen.
     */
    public static final double FIELD_PERCENT = 15;

    /** Above this stripes begin to show in the crop, %. Assumption: after RB209 as quoted by the farm press. */
    public static final double STRIPES_PERCENT = 20;

    private CvLimits() {}
}
