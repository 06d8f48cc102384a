package org.evenfall.reference;

/**
 * What a throw difference means for the reference's settings. Assumption: all limits, as the settings are only a start for
 * the tray test, which decides.
 *
 * <ul>
 *   <li>{@link Verdict#HOLD}: same width, throw within {@value #HOLD_PERCENT} %, the whole 90 % interval within
 *       {@value #HOLD_INTERVAL_PERCENT} %, flow within {@value #HOLD_FLOW_PERCENT} %, spread index within
 *       {@value #HOLD_SPREAD_POINTS} points, nothing of the reference unmeasured.
 *   <li>{@link Verdict#HOLD_AS_START}: same width, throw within {@value #START_PERCENT} %, the whole interval within
 *       {@value #START_INTERVAL_PERCENT} %.
 *   <li>{@link Verdict#FIRST_GUESS_ONLY}: everything else, and every reference of another width.
 * </ul>
 */
public final class Verdicts {

    /** Throw difference up to which settings hold and no direction is given, %. */
    public static final double HOLD_PERCENT = 1.5;

    /** Farthest end of the 90 % interval up to which settings hold, %. */
    public static final double HOLD_INTERVAL_PERCENT = 8;

    /** Flow difference up to which settings hold, %. */
    public static final double HOLD_FLOW_PERCENT = 10;

    /** Difference of the spread index up to which settings hold, points. */
    public static final double HOLD_SPREAD_POINTS = 6;

    /** Throw difference up to which settings are a start, %. */
    public static final double START_PERCENT = 10;

    /** Farthest end of the 90 % interval up to which settings are a start, %. */
    public static final double START_INTERVAL_PERCENT = 20;

    /** Difference, share of the width, up to which two widths are the same. */
    public static final double SAME_WIDTH_SHARE = 0.01;

    /** Rounding that does not count against a width, m. */
    private static final double ROUNDING = 1e-9;

    private Verdicts() {}

    /**
     * Which way to go from the reference's settings.
     *
     * @param throwPercent throw of the new product less the reference's, %
     */
    public static Direction direction(double throwPercent) {
        if (Math.abs(throwPercent) <= HOLD_PERCENT) {
            return Direction.AS_IT_IS;
        }
        return throwPercent < 0 ? Direction.WIDER : Direction.NARROWER;
    }

    /** Whether two widths, m, are the same. */
    public static boolean sameWidth(double widthM, double otherM) {
        return Math.abs(widthM - otherM) <= SAME_WIDTH_SHARE * otherM + ROUNDING;
    }

    /**
     * The verdict on one reference.
     *
     * @param sameWidth it was tested at this tramline width
     * @param complete density, median and spread of both were measured
     * @param throwPercent throw difference, %
     * @param farthestPercent farther end of the 90 % interval of the throw difference, %, without its sign
     * @param flowPercent flow difference at the same opening, %
     * @param spreadPoints difference of the spread index, points
     */
    public static Verdict of(
            boolean sameWidth,
            boolean complete,
            double throwPercent,
            double farthestPercent,
            double flowPercent,
            double spreadPoints) {
        if (!sameWidth) {
            return Verdict.FIRST_GUESS_ONLY;
        }
        double size = Math.abs(throwPercent);
        if (complete
                && size <= HOLD_PERCENT
                && farthestPercent <= HOLD_INTERVAL_PERCENT
                && Math.abs(flowPercent) <= HOLD_FLOW_PERCENT
                && Math.abs(spreadPoints) <= HOLD_SPREAD_POINTS) {
            return Verdict.HOLD;
        }
        return size <= START_PERCENT && farthestPercent <= START_INTERVAL_PERCENT
                ? Verdict.HOLD_AS_START
                : Verdict.FIRST_GUESS_ONLY;
    }
}
