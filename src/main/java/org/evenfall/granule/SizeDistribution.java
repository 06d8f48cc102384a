package org.evenfall.granule;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Log-normal size distribution by mass.
 *
 * @param d50Mm mass median diameter, mm
 * @param geometricSd geometric standard deviation, at least 1
 * @param lnD50StandardError standard error of ln d50
 * @param sigmaStandardError standard error of sigma, the standard deviation of ln diameter
 * @param spreadIsBound the spread is no value: an upper bound, since all mass was in one or two classes; or a guess, since
 *     only the median is known
 */
public record SizeDistribution(
        double d50Mm, double geometricSd, double lnD50StandardError, double sigmaStandardError, boolean spreadIsBound) {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException when a value is outside its range
     */
    public SizeDistribution {
        if (!(d50Mm > 0) || !(geometricSd >= 1) || !(lnD50StandardError >= 0) || !(sigmaStandardError >= 0)) {
            throw new IllegalArgumentException(
                    "d50Mm must be above 0, geometricSd at least 1, standard errors at least 0: " + d50Mm + ", "
                            + geometricSd + ", " + lnD50StandardError + ", " + sigmaStandardError);
        }
    }

    /**
     * Geometric standard deviation where only a median is known. Source: European Fertiliser Blenders
     * Association, spread index below 18.
     */
    public static final double USUAL_GEOMETRIC_SD = 1.2;

    /** Standard error of ln d50 of a median from a handbook. Assumption: as one sieved sample. */
    public static final double HANDBOOK_LN_D50_ERROR = 0.03;

    /** Standard error of sigma of that guess. Assumption: spread indices run from about 13 to 23. */
    public static final double GUESSED_SIGMA_ERROR = 0.05;

    /** Shares finer that bound the spread index: one standard deviation on either side, rounded as the trade does. */
    private static final double SPREAD_INDEX_LOW_SHARE = 0.16;

    private static final double SPREAD_INDEX_HIGH_SHARE = 0.84;

    /**
     * A distribution whose median and spread are taken as exact, for models and worked examples.
     *
     * @param d50Mm median diameter, mm, above 0
     * @param geometricSd geometric standard deviation, at least 1
     */
    public static SizeDistribution exact(double d50Mm, double geometricSd) {
        return new SizeDistribution(d50Mm, geometricSd, 0, 0, false);
    }

    /**
     * A product of which only the median is known. Its spread is a guess, marked as no value.
     *
     * @param d50Mm median diameter, mm, above 0
     */
    public static SizeDistribution medianOnly(double d50Mm) {
        return new SizeDistribution(d50Mm, USUAL_GEOMETRIC_SD, HANDBOOK_LN_D50_ERROR, GUESSED_SIGMA_ERROR, true);
    }

    /** Standard deviation of ln diameter: ln of the geometric standard deviation. */
    public double sigma() {
        return Math.log(geometricSd);
    }

    /** Diameter that a share of the mass is finer than, mm; the share strictly between 0 and 1. */
    public double quantileMm(double share) {
        return d50Mm * Math.exp(sigma() * STANDARD.inverseCumulativeProbability(share));
    }

    /** Share of the mass finer than a diameter, 0 to 1; a step at the median for a single size. */
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

    /** Size guide number of a median, mm: 100 × d50. Source: Street, Sherratt 2012, Ohio State University. */
    public static double sgn(double d50Mm) {
        return 100 * d50Mm;
    }

    /**
     * Uniformity index: 100 × diameter at 95 % retained / diameter at 10 % retained, so 5 % and 90 % finer.
     * Source (from memory): Canadian Fertilizer Institute.
     */
    public double uniformityIndex() {
        return 100 * quantileMm(0.05) / quantileMm(0.90);
    }

    /** Granulometric spread index 100 (d84 − d16) / (2 d50), %. */
    public double spreadIndexPercent() {
        return 100 * (quantileMm(SPREAD_INDEX_HIGH_SHARE) - quantileMm(SPREAD_INDEX_LOW_SHARE)) / (2 * d50Mm);
    }
}
