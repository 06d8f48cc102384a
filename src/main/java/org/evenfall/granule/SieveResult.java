package org.evenfall.granule;

import java.util.List;
import org.evenfall.quantity.Interval;
import org.jspecify.annotations.Nullable;

/**
 * Sieve analysis of the product.
 *
 * @param aperturesMm apertures, finest first, mm
 * @param sharesPercent mean share of each class, finest class first, %
 * @param samples number of samples
 * @param distribution fitted distribution
 * @param d16Mm 16 % of the mass is finer, mm
 * @param d50Mm median, mm
 * @param d50IntervalMm 90 % interval of d50, mm
 * @param d84Mm 84 % is finer, mm
 * @param indices figures of the trade, for people; the flight takes the distribution
 * @param shareUnder2MmPercent share finer than 2 mm, %
 * @param share2To4MmPercent share between 2 and 4 mm, %
 * @param worstResidualPercent largest difference between a measured and a fitted class share, percentage points
 * @param d50InterpolatedMm d50 by log interpolation between apertures, a check; null where it lies outside the sieves
 * @param readFrom which figures were read on the sieve curve and which on the fit
 */
public record SieveResult(
        List<Double> aperturesMm,
        List<Double> sharesPercent,
        int samples,
        SizeDistribution distribution,
        double d16Mm,
        double d50Mm,
        Interval d50IntervalMm,
        double d84Mm,
        Indices indices,
        double shareUnder2MmPercent,
        double share2To4MmPercent,
        double worstResidualPercent,
        @Nullable Double d50InterpolatedMm,
        ReadFrom readFrom) {

    /**
     * Figures of the trade for a size distribution.
     *
     * @param spreadIndexPercent granulometric spread index 100 (d84 − d16) / (2 d50), %
     * @param sgn size guide number, 100 × d50 in mm
     * @param uniformityIndex uniformity index, 100 × d at 95 % retained / d at 10 % retained
     */
    public record Indices(double spreadIndexPercent, double sgn, double uniformityIndex) {}

    /**
     * Where each figure was read; the size guide number as d50.
     *
     * @param d16Mm of d16
     * @param d50Mm of the median
     * @param d84Mm of d84
     * @param spreadIndexPercent of the spread index
     * @param uniformityIndex of the uniformity index
     * @param shareUnder2MmPercent of the share under 2 mm
     * @param share2To4MmPercent of the share from 2 to 4 mm
     */
    public record ReadFrom(
            SieveReading d16Mm,
            SieveReading d50Mm,
            SieveReading d84Mm,
            SieveReading spreadIndexPercent,
            SieveReading uniformityIndex,
            SieveReading shareUnder2MmPercent,
            SieveReading share2To4MmPercent) {}

    /** Copies the lists. */
    public SieveResult {
        aperturesMm = List.copyOf(aperturesMm);
        sharesPercent = List.copyOf(sharesPercent);
    }
}
