package org.evenfall.rate;

import org.jspecify.annotations.Nullable;

/**
 * One bucket test.
 *
 * @param openingLeft opening left
 * @param openingRight opening right
 * @param flow flow caught
 * @param kgPerHa rate that follows, kg/ha; null while width or speed is not known
 * @param kgPerHaStandardError its standard error, kg/ha
 * @param agreement deviations, with the verdict on them
 * @param next next opening
 */
public record BucketResult(
        double openingLeft,
        double openingRight,
        Flow flow,
        @Nullable Double kgPerHa,
        @Nullable Double kgPerHaStandardError,
        Agreement agreement,
        Next next) {

    /**
     * Flow caught.
     *
     * @param leftKgPerMin left, kg/min; null when not caught
     * @param rightKgPerMin right, kg/min; null when not caught
     * @param totalKgPerMin all outlets, kg/min
     */
    public record Flow(
            @Nullable Double leftKgPerMin, @Nullable Double rightKgPerMin, double totalKgPerMin) {}

    /**
     * Deviations from the wanted flow, between the sides and between repeats.
     *
     * @param deviationPercent flow of all outlets from the wanted flow, %; null when no flow is wanted
     * @param leftRightPercent left less right, % of their mean; null with one side or one outlet
     * @param repeatSpreadPercent largest spread between repeats of one outlet, %; null without repeats
     * @param withinTolerance a flow is wanted, and all three are within their limits
     */
    public record Agreement(
            @Nullable Double deviationPercent,
            @Nullable Double leftRightPercent,
            @Nullable Double repeatSpreadPercent,
            boolean withinTolerance) {}

    /**
     * Next opening.
     *
     * @param left left; null where none can be given
     * @param right right; null where none can be given
     * @param source how it was found; null where the opening stays
     */
    public record Next(
            @Nullable Double left,
            @Nullable Double right,
            @Nullable OpeningSource source) {}
}
