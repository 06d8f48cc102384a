package org.evenfall.rate;

import org.jspecify.annotations.Nullable;

/**
 * One bucket test.
 *
 * @param openingLeft opening left
 * @param openingRight opening right
 * @param leftKgPerMin flow left, kg/min
 * @param rightKgPerMin flow right, kg/min
 * @param kgPerMin flow of all outlets, kg/min
 * @param kgPerHa rate that follows, kg/ha
 * @param kgPerHaStandardError its standard error, kg/ha
 * @param deviationPercent from the wanted rate, %
 * @param leftRightPercent left less right, % of their mean
 * @param repeatSpreadPercent largest spread between repeats of one outlet, %
 * @param withinTolerance rate within tolerance and both sides agree
 * @param nextOpeningLeft next opening left
 * @param nextOpeningRight next opening right
 * @param nextFrom where the next opening comes from
 */
public record BucketResult(
        double openingLeft,
        double openingRight,
        @Nullable Double leftKgPerMin,
        @Nullable Double rightKgPerMin,
        double kgPerMin,
        @Nullable Double kgPerHa,
        @Nullable Double kgPerHaStandardError,
        @Nullable Double deviationPercent,
        @Nullable Double leftRightPercent,
        @Nullable Double repeatSpreadPercent,
        boolean withinTolerance,
        @Nullable Double nextOpeningLeft,
        @Nullable Double nextOpeningRight,
        @org.jspecify.annotations.Nullable OpeningSource nextFrom) {}
