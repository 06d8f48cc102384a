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
        SieveReader reader = new SieveReader(apertures, passing, mean, distribution);
        SieveReader.Figure d16 = reader.diameterMm(16);
        SieveReader.Figure d50 = reader.diameterMm(50);
        SieveReader.Figure d84 = reader.diameterMm(84);
        SieveReader.Figure spread = reader.spreadIndexPercent();
        SieveReader.Figure uniformity = reader.uniformityIndex();
        SieveReader.Figure under2 = reader.shareUnderPercent(USUAL_GRANULES_MM.low());
        SieveReader.Figure usual = reader.shareBetweenPercent(USUAL_GRANULES_MM.low(), USUAL_GRANULES_MM.high());
        Interval lnD50 = NinetyPercent.of(Math.log(d50.value()), distribution.lnD50StandardError());
        OptionalDouble interpolated = SieveInterpolation.diameterMm(apertures, passing, 50);
        return new SieveResult(
                aperturesMm,
                Arrays.stream(mean).mapToObj(share -> 100 * share).toList(),
                samples,
                distribution,
                d16.value(),
                d50.value(),
                new Interval(Math.exp(lnD50.low()), Math.exp(lnD50.high())),
                d84.value(),
                new SieveResult.Indices(spread.value(), SizeDistribution.sgn(d50.value()), uniformity.value()),
                under2.value(),
                usual.value(),
                100 * worst,
                interpolated.isPresent() ? interpolated.getAsDouble() : null,
                new SieveResult.ReadFrom(
                        d16.from(),
                        d50.from(),
                        d84.from(),
                        spread.from(),
                        uniformity.from(),
                        under2.from(),
                        usual.from()));
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
