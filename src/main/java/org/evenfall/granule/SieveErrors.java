package org.evenfall.granule;

import java.util.List;

/**
 * How well sieving tells median and spread. Sieve amounts are masses, not counts: what varies is the handful taken and the
 * shaking, far more than the number of granules. So the amounts are treated as if they came from an effective number of
 * independent granules: {@link #GRANULES_PER_SAMPLE} a sample where one sample is all there is (an assumption); with
 * more, the scatter between samples moves that number (Pearson's statistic over its degrees of freedom), the assumption
 * still counting as {@link #ASSUMPTION_WEIGHT} degrees, so that two samples that happen to agree prove little.
 *
 * @param lnD50 standard error of ln d50
 * @param sigma standard error of the standard deviation of ln d
 */
record SieveErrors(double lnD50, double sigma) {

    /** Effective granules a sample: gives about 3 % on d50 for ordinary granules on three sieves. Ours. */
    static final double GRANULES_PER_SAMPLE = 40;

    /** Degrees of freedom that the assumption counts for beside the scatter seen. Ours. */
    static final double ASSUMPTION_WEIGHT = 4;

    /** Error of the apertures themselves, in ln mm, that no repeat takes away. Ours. */
    static final double APERTURE_ERROR = 0.01;

    /** @param mean mean share of each class; samples the shares of each sample */
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
