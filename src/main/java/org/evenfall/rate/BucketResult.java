package org.evenfall.rate;

import org.jspecify.annotations.Nullable;

/**
 * One bucket test. A side that it did not catch is that of the latest earlier test at the same openings.
 *
 * @param openingLeft opening left, or the factor of a terminal
 * @param openingRight opening right, or the factor
 * @param flow flow caught
 * @param kgPerHa rate that follows, kg/ha; null while width or speed is not known
 * @param kgPerHaStandardError its standard error, kg/ha
 * @param agreement deviations, with the verdict on them
 * @param next next opening or factor
 * @param bulkDensityKgPerL bulk density of the product caught, kg/L; null when not known
 */
public record BucketResult(
        double openingLeft,
        double openingRight,
        Flow flow,
        @Nullable Double kgPerHa,
        @Nullable Double kgPerHaStandardError,
        Agreement agreement,
        Next next,
        @Nullable Double bulkDensityKgPerL) {

    /** Whether the left side was caught at these openings. */
    public boolean leftCaught() {
        return flow.leftKgPerMin() != null;
    }

    /** Whether the right side was caught at these openings. */
    public boolean rightCaught() {
        return flow.rightKgPerMin() != null;
    }

    /** Standard error of the deviation from the wanted flow, points; null while either is not known. */
    public @Nullable Double deviationErrorPercent() {
        return kgPerHa == null || kgPerHaStandardError == null || agreement.deviationPercent() == null
                ? null
                : Double.valueOf(kgPerHaStandardError / kgPerHa * (100 + agreement.deviationPercent()));
    }

    /**
     * Flow caught.
     *
     * @param leftKgPerMin left, kg/min; null when not caught at these openings
     * @param rightKgPerMin right, kg/min; null when not caught at these openings
     * @param totalKgPerMin all outlets, kg/min
     */
    public record Flow(
            @Nullable Double leftKgPerMin, @Nullable Double rightKgPerMin, double totalKgPerMin) {}

    /**
     * Deviations from the wanted flow, or of a factor from the weight shown; between the sides; between repeats.
     *
     * @param deviationPercent flow of all outlets from the wanted flow, or weight caught from the weight shown, %; null when
     *     neither is known
     * @param leftRightPercent left less right, % of their mean; null with one side or one outlet
     * @param repeatSpreadPercent largest spread between repeats of one outlet, %; null without repeats
     * @param withinTolerance a flow is wanted, every outlet was caught, and all deviations are within their limits
     * @param leftDeviationPercent the same as {@code deviationPercent} of the left outlet alone; null with one outlet
     * @param rightDeviationPercent the same of the right outlet alone
     */
    public record Agreement(
            @Nullable Double deviationPercent,
            @Nullable Double leftRightPercent,
            @Nullable Double repeatSpreadPercent,
            boolean withinTolerance,
            @Nullable Double leftDeviationPercent,
            @Nullable Double rightDeviationPercent) {}

    /**
     * Next opening or factor.
     *
     * @param left left; null where none can be given
     * @param right right; null where none can be given; a factor is the same on both sides
     * @param source how it was found; null where the opening stays
     */
    public record Next(
            @Nullable Double left,
            @Nullable Double right,
            @Nullable OpeningSource source) {}
}
