package org.evenfall.granule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** From amounts on sieves of any apertures to a size distribution. */
public final class Sieves {

    /**
     * Standard error of ln d50 from one sample: taking the sample and shaking the box, not counting. Ours, after what
     * repeats of careful people show.
     */
    public static final double ONE_SAMPLE_LN_D50_ERROR = 0.03;

    /** Standard error of ln of the geometric standard deviation from one sample. Ours. */
    public static final double ONE_SAMPLE_LN_SD_ERROR = 0.02;

    private static final double Z90 = 1.6449;

    private Sieves() {}

    /**
     * @param aperturesMm apertures, mm, strictly rising, at least two
     * @param samples amounts of each sample, finest class first, one more than apertures, none negative, sum above 0;
     *     any one unit a sample, since only shares count
     */
    public static SieveResult analyse(List<Double> aperturesMm, List<List<Double>> samples) {
        double[] apertures =
                aperturesMm.stream().mapToDouble(Double::doubleValue).toArray();
        check(apertures, samples);
        double[] mean = new double[apertures.length + 1];
        List<LogNormalFit> fits = new ArrayList<>();
        for (List<Double> sample : samples) {
            double[] shares = shares(sample);
            fits.add(LogNormalFit.of(apertures, shares));
            for (int i = 0; i < mean.length; i++) {
                mean[i] += shares[i] / samples.size();
            }
        }
        LogNormalFit fit = LogNormalFit.of(apertures, mean);
        int n = samples.size();
        double lnD50Error = Math.max(ONE_SAMPLE_LN_D50_ERROR / Math.sqrt(n), scatter(fits, true) / Math.sqrt(n));
        double lnSdError = Math.max(ONE_SAMPLE_LN_SD_ERROR / Math.sqrt(n), scatter(fits, false) / Math.sqrt(n));
        if (fit.isBound()) {
            lnD50Error = Math.hypot(lnD50Error, fit.sigma() / 2);
            lnSdError = Math.hypot(lnSdError, fit.sigma() / 2);
        }
        SizeDistribution distribution =
                new SizeDistribution(Math.exp(fit.mu()), Math.exp(fit.sigma()), lnD50Error, lnSdError, fit.isBound());
        return result(aperturesMm, apertures, mean, n, fit, distribution);
    }

    private static SieveResult result(
            List<Double> aperturesMm,
            double[] apertures,
            double[] mean,
            int samples,
            LogNormalFit fit,
            SizeDistribution distribution) {
        double[] fitted = fit.shares(apertures);
        double[] passing = new double[apertures.length];
        double sum = 0;
        double worst = 0;
        for (int i = 0; i < mean.length; i++) {
            sum += mean[i];
            worst = Math.max(worst, Math.abs(mean[i] - fitted[i]));
            if (i < passing.length) {
                passing[i] = 100 * sum;
            }
        }
        double d50 = distribution.d50Mm();
        double error = distribution.lnD50StandardError();
        OptionalDouble interpolated = SieveInterpolation.diameterMm(apertures, passing, 50);
        double under2 = shareUnder(2, apertures, passing, distribution);
        return new SieveResult(
                aperturesMm,
                Arrays.stream(mean).mapToObj(share -> 100 * share).toList(),
                samples,
                distribution,
                distribution.quantileMm(0.16),
                d50,
                d50 * Math.exp(-Z90 * error),
                d50 * Math.exp(Z90 * error),
                distribution.quantileMm(0.84),
                distribution.spreadIndexPercent(),
                100 * d50,
                100 * distribution.quantileMm(0.05) / distribution.quantileMm(0.90),
                under2,
                shareUnder(4, apertures, passing, distribution) - under2,
                100 * worst,
                interpolated.isPresent() ? interpolated.getAsDouble() : null);
    }

    /** Measured where an aperture lies there, else from the fit, %. */
    private static double shareUnder(
            double diameterMm, double[] apertures, double[] passing, SizeDistribution distribution) {
        for (int i = 0; i < apertures.length; i++) {
            if (Math.abs(apertures[i] - diameterMm) < 1e-9) {
                return passing[i];
            }
        }
        return 100 * distribution.shareFinerThan(diameterMm);
    }

    private static double scatter(List<LogNormalFit> fits, boolean ofMedian) {
        if (fits.size() < 2) {
            return 0;
        }
        double[] values = fits.stream()
                .mapToDouble(fit -> ofMedian ? fit.mu() : fit.sigma())
                .toArray();
        double mean = Arrays.stream(values).average().orElseThrow();
        double squares = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
        return Math.sqrt(squares / (values.length - 1));
    }

    private static double[] shares(List<Double> sample) {
        double total = sample.stream().mapToDouble(Double::doubleValue).sum();
        return sample.stream().mapToDouble(amount -> amount / total).toArray();
    }

    private static void check(double[] apertures, List<List<Double>> samples) {
        if (apertures.length < 2 || samples.isEmpty() || !(apertures[0] > 0)) {
            throw new IllegalArgumentException("at least two apertures above 0 and one sample");
        }
        for (int i = 1; i < apertures.length; i++) {
            if (!(apertures[i] > apertures[i - 1])) {
                throw new IllegalArgumentException("apertures must rise: " + Arrays.toString(apertures));
            }
        }
        for (List<Double> sample : samples) {
            if (sample.size() != apertures.length + 1
                    || sample.stream().anyMatch(amount -> !(amount >= 0))
                    || !(sample.stream().mapToDouble(Double::doubleValue).sum() > 0)) {
                throw new IllegalArgumentException(
                        "one amount more than apertures, none below 0, sum above 0: " + sample);
            }
        }
    }
}
