package org.evenfall.reference;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * How often each of several references would be the closest if all measurements were repeated, by simulation.
 *
 * @param shares share of the redraws in which each was the closest, in the order of the comparisons; summing to 1
 * @param redraws how often the measurements were redrawn
 */
record ClosestShares(List<Double> shares, int redraws) {

    /** Redraws between two calls of the monitor. */
    static final int MONITOR_INTERVAL = 256;

    /** Measurements of one product that are redrawn: bulk density, median, spread. */
    private static final int MEASUREMENTS = 3;

    ClosestShares {
        shares = List.copyOf(shares);
    }

    /**
     * Simulates repeated measurements.
     *
     * @param competing the references; none gives an empty result
     * @param seed seed of the simulation
     * @param redraws how often the measurements are redrawn, at least 1
     * @param monitor called before every {@value #MONITOR_INTERVAL}th redraw; the first {@value #MONITOR_INTERVAL} are
     *     done whatever it answers
     */
    static ClosestShares simulate(List<Comparison> competing, long seed, int redraws, ProgressMonitor monitor) {
        if (competing.isEmpty()) {
            return new ClosestShares(List.of(), 0);
        }
        NormalizedGaussianSampler gauss =
                ZigguratSampler.NormalizedGaussian.of(RandomSource.XO_RO_SHI_RO_128_PP.create(seed));
        int[] firsts = new int[competing.size()];
        int drawn = 0;
        while (drawn < redraws && continues(drawn, redraws, monitor)) {
            firsts[closest(competing, gauss)]++;
            drawn++;
        }
        double total = drawn;
        return new ClosestShares(
                Arrays.stream(firsts).mapToObj(first -> first / total).toList(), drawn);
    }

    private static boolean continues(int drawn, int redraws, ProgressMonitor monitor) {
        return drawn % MONITOR_INTERVAL != 0 || monitor.shouldContinue(drawn / (double) redraws) || drawn == 0;
    }

    /** Index of the closest reference in one redraw; the errors of the new product are common to all references. */
    private static int closest(List<Comparison> competing, NormalizedGaussianSampler gauss) {
        double[] own = errors(gauss);
        int closest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < competing.size(); i++) {
            double score = competing.get(i).squaredScore(own, errors(gauss), gauss.sample());
            if (score < least) {
                least = score;
                closest = i;
            }
        }
        return closest;
    }

    private static double[] errors(NormalizedGaussianSampler gauss) {
        double[] errors = new double[MEASUREMENTS];
        Arrays.setAll(errors, i -> gauss.sample());
        return errors;
    }
}
