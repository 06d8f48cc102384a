package org.evenfall.granule;

import java.util.List;

/**
 * Standard errors of median and spread by sieving. Sieve amounts are masses, not counts: the sample taken and the shaking
 * vary far more than the number of granules. So the amounts are treated as if they came from an effective number of
 * independent granules: {@link #GRANULES_PER_SAMPLE} for one sample; with more samples, their scatter (Pearson's
 * statistic over its degrees of freedom) moves that number, the assumption still counting as
 * {@link #ASSUMPTION_WEIGHT} degrees, so that two samples that agree by chance prove little.
 *
 * @param lnD50 standard error of ln d50
 * @param sigma standard error of sigma, the standard deviation of ln d
 */
record SieveErrors(double lnD50, double sigma) {

    /** Effective granules of one sample. Assumption: gives 3 to 5 % on d50 for ordinary granules on three sieves. */
    static final double GRANULES_PER_SAMPLE = 40;

    /** Degrees of freedom that the assumption counts for against the observed scatter. Assumption: as five samples would. */
    static final double ASSUMPTION_WEIGHT = 4;

    /** Error of the apertures, in ln mm, which repeats do not reduce. Assumption: 1 % of the aperture. */
    static final double APERTURE_ERROR = 0.01;

    /**
     * Errors of a fit.
     *
     * @param aperturesMm apertures, mm, strictly rising
     * @param mean mean share of each class
     * @param samples shares of each sample, at least one
     */
    static SieveErrors of(LogNormalFit fit, double[] aperturesMm, double[] mean, List<double[]> samples) {
        double granules = GRANULES_PER_SAMPLE * samples.size() / dispersion(mean, samples);
        double[] sampling = fit.isBound() ? bound(fit, granules) : fit.errors(aperturesMm, granules);
        return new SieveErrors(Math.hypot(sampling[0], APERTURE_ERROR), sampling[1]);
    }

    /** A bound: the true spread lies anywhere below it, and the median moves with it. */
    private static double[] bound(LogNormalFit fit, double granules) {
        double half = fit.sigma() / 2;
        return new double[] {Math.hypot(half, fit.sigma() / Math.sqrt(granules)), half};
    }

    /** Scatter between samples over what the assumed number of granules would give; 1 for one sample. */
    private static double dispersion(double[] mean, List<double[]> samples) {
        double pearson = 0;
        int classes = 0;
        for (int i = 0; i < mean.length; i++) {
            if (mean[i] > 0) {
                classes++;
                for (double[] sample : samples) {
                    pearson += GRANULES_PER_SAMPLE * (sample[i] - mean[i]) * (sample[i] - mean[i]) / mean[i];
                }
            }
        }
        double degrees = (samples.size() - 1.0) * (classes - 1.0);
        return (ASSUMPTION_WEIGHT + pearson) / (ASSUMPTION_WEIGHT + degrees);
    }
}
