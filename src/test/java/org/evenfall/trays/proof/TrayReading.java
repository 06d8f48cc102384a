package org.evenfall.trays.proof;

import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.PoissonSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.trays.CatchPlans;

/**
 * How the trays of a virtual machine are read: real granules fall in, their number Poisson, their masses log-normal, and the
 * catch is read to a step.
 */
record TrayReading(
        SizeDistribution sizes,
        double densityKgPerM3,
        double rateKgPerHa,
        double trayAreaM2,
        int runs,
        double readingStepG) {

    private static final double[] AREAS_M2 = {0.25, 0.25, 0.5};
    /** Side of a tray across the travel, m; the larger one is longer. */
    static final double ACROSS_M = 0.5;

    private static final double[] STEPS_G = {0.01, 0.1, 0.5, 1};

    /** A random one: 60 to 350 kg/ha, one to four runs. */
    static TrayReading draw(UniformRandomProvider random) {
        return new TrayReading(
                SizeDistribution.exact(random.nextDouble(2.2, 4), random.nextDouble(1.1, 1.35)),
                random.nextDouble(1250, 1850),
                random.nextDouble(60, 350),
                AREAS_M2[random.nextInt(AREAS_M2.length)],
                1 + random.nextInt(4),
                STEPS_G[random.nextInt(STEPS_G.length)]);
    }

    private double meanGranuleG() {
        return CatchPlans.meanGranuleG(sizes, densityKgPerM3);
    }

    /** Noise at the mean catch by the usual formula, %. */
    double noisePercent(List<Double> catchesG) {
        double mean =
                catchesG.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        return CatchPlans.noisePercent(mean, meanGranuleG(), readingStepG);
    }

    /** What a tray catches and is read as, g, at an amount over the mean of the field. */
    double catchG(UniformRandomProvider random, double amount) {
        double expectedG = amount * rateKgPerHa * trayAreaM2 * runs / 10;
        // by mass the logarithm of the mass of a granule has the standard deviation 3 sigma; by number its mean is
        // lower
        double spread = 3 * sizes.sigma();
        double massMeanG = meanGranuleG();
        double numberMeanG = massMeanG * Math.exp(-spread * spread);
        double logMedian = Math.log(numberMeanG) - spread * spread / 2;
        if (!(expectedG > 0)) {
            return 0;
        }
        int granules = PoissonSampler.of(random, expectedG / numberMeanG).sample();
        ZigguratSampler.NormalizedGaussian gaussian = ZigguratSampler.NormalizedGaussian.of(random);
        double sum = 0;
        for (int i = 0; i < granules; i++) {
            sum += Math.exp(logMedian + spread * gaussian.sample());
        }
        return readingStepG * Math.round(sum / readingStepG);
    }
}
