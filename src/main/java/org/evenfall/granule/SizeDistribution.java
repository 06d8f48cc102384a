package org.evenfall.granule;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Log-normal size distribution by mass.
 *
 * @param d50Mm mass median diameter, mm
 * @param geometricSd geometric standard deviation, at least 1
 * @param lnD50StandardError standard error of ln d50
 * @param lnSdStandardError standard error of ln of the geometric standard deviation
 * @param spreadIsBound the spread is no value: an upper bound, since all mass lay in one or two classes; or a guess, since
 *     only the median is known
 */
public record SizeDistribution(
        double d50Mm, double geometricSd, double lnD50StandardError, double lnSdStandardError, boolean spreadIsBound) {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    public SizeDistribution {
        if (!(d50Mm > 0) || !(geometricSd >= 1) || !(lnD50StandardError >= 0) || !(lnSdStandardError >= 0)) {
            throw new IllegalArgumentException(
                    "d50Mm must be above 0, geometricSd at least 1, standard errors at least 0: " + d50Mm + ", "
                            + geometricSd + ", " + lnD50StandardError + ", " + lnSdStandardError);
        }
    }

    /** Geometric standard deviation taken where only a median is known: spread index 18, the blenders' limit (seen). */
    public static final double USUAL_GEOMETRIC_SD = 1.2;

    /** Standard error of ln d50 of a median read from a handbook. Ours. */
    public static final double HANDBOOK_LN_D50_ERROR = 0.03;

    /**
     * A product of which only the median is known. Its spread is a guess, marked as no value.
     *
     * @param d50Mm median diameter, mm, above 0
     */
    public static SizeDistribution medianOnly(double d50Mm) {
        return new SizeDistribution(d50Mm, USUAL_GEOMETRIC_SD, HANDBOOK_LN_D50_ERROR, 0.05, true);
    }

    /** Standard deviation of the natural logarithm of the diameter. */
    public double sigma() {
        return Math.log(geometricSd);
    }

    /** Diameter that a share of the mass is finer than, mm; the share strictly between 0 and 1. */
    public double quantileMm(double share) {
        return d50Mm * Math.exp(sigma() * STANDARD.inverseCumulativeProbability(share));
    }

    /** Share of the mass finer than a diameter, 0 to 1. */
    public double shareFinerThan(double diameterMm) {
        if (diameterMm <= 0) {
            return 0;
        }
        if (geometricSd == 1) {
            return diameterMm < d50Mm ? 0 : 1;
        }
        return STANDARD.cumulativeProbability(Math.log(diameterMm / d50Mm) / sigma());
    }

    /** Share of the mass for each mm of diameter at a diameter, 1/mm; 0 for a single size, which has no density. */
    public double densityPerMm(double diameterMm) {
        if (diameterMm <= 0 || geometricSd == 1) {
            return 0;
        }
        return STANDARD.density(Math.log(diameterMm / d50Mm) / sigma()) / (sigma() * diameterMm);
    }

    /** Size guide number: 100 × d50 in mm (Street, Sherratt, Ohio State University 2012, seen). */
    public double sgn() {
        return 100 * d50Mm;
    }

    /** Median diameter of a size guide number, mm. */
    public static double d50MmOfSgn(double sgn) {
        return sgn / 100;
    }

    /**
     * Uniformity index: 100 × diameter at 95 % retained / diameter at 10 % retained (Canadian Fertilizer Institute, from
     * memory), so 5 % and 90 % finer.
     */
    public double uniformityIndex() {
        return 100 * quantileMm(0.05) / quantileMm(0.90);
    }

    /** Granulometric spread index 100 (d84 − d16) / (2 d50), %. */
    public double spreadIndexPercent() {
        return 100 * (quantileMm(0.84) - quantileMm(0.16)) / (2 * d50Mm);
    }
}
