package org.evenfall.granule;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.NinetyPercent;

/**
 * From amounts on sieves of any apertures to a size distribution. Each sample has the same weight, whatever its amount; a
 * column measured by its height counts as mass, since the classes of one product pack alike.
 */
public final class Sieves {

    /** An aperture within this share of a diameter counts as that diameter. Assumption: so 5/64 in is 2 mm. */
    static final double SAME_APERTURE_SHARE = 0.015;

    /** Diameters between which published figures give the share of the mass, mm. */
    private static final Interval USUAL_GRANULES_MM = new Interval(2, 4);

    private Sieves() {}

    /**
     * Fits a log-normal distribution to sieved samples.
     *
     * @param aperturesMm apertures, mm, strictly rising, at least two
     * @param samples amounts of each sample, finest class first, one more than apertures, none negative, sum above 0;
     *     any one unit a sample, since only shares count
     * @throws IllegalArgumentException when apertures or amounts are outside these ranges
     */
    public static SieveResult analyse(List<Double> aperturesMm, List<List<Double>> samples) {
        double[] apertures =
                aperturesMm.stream().mapToDouble(Double::doubleValue).toArray();
        check(apertures, samples);
        List<double[]> shares = samples.stream().map(Sieves::shares).toList();
        double[] mean = new double[apertures.length + 1];
        for (double[] sample : shares) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += sample[i] / shares.size();
            }
        }
        LogNormalFit fit = LogNormalFit.of(apertures, mean);
        SieveErrors errors = SieveErrors.of(fit, apertures, mean, shares);
        SizeDistribution distribution = new SizeDistribution(
                Math.exp(fit.mu()), Math.exp(fit.sigma()), errors.lnD50(), errors.sigma(), fit.isBound());
        return result(aperturesMm, apertures, mean, samples.size(), fit, distribution);
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
        Interval lnD50 = NinetyPercent.of(Math.log(d50), distribution.lnD50StandardError());
        OptionalDouble interpolated = SieveInterpolation.diameterMm(apertures, passing, 50);
        double under2 = shareUnder(USUAL_GRANULES_MM.low(), apertures, passing, distribution);
        return new SieveResult(
                aperturesMm,
                Arrays.stream(mean).mapToObj(share -> 100 * share).toList(),
                samples,
                distribution,
                distribution.quantileMm(0.16),
                d50,
                new Interval(Math.exp(lnD50.low()), Math.exp(lnD50.high())),
                distribution.quantileMm(0.84),
                new SieveResult.Indices(
                        distribution.spreadIndexPercent(), distribution.sgn(), distribution.uniformityIndex()),
                under2,
                Math.max(0, shareUnder(USUAL_GRANULES_MM.high(), apertures, passing, distribution) - under2),
                100 * worst,
                interpolated.isPresent() ? interpolated.getAsDouble() : null);
    }

    /** Share finer than a diameter, %: measured where an aperture has that diameter, else from the fit. */
    private static double shareUnder(
            double diameterMm, double[] apertures, double[] passing, SizeDistribution distribution) {
        for (int i = 0; i < apertures.length; i++) {
            if (Math.abs(apertures[i] / diameterMm - 1) <= SAME_APERTURE_SHARE) {
                return passing[i];
            }
        }
        return 100 * distribution.shareFinerThan(diameterMm);
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
