package org.evenfall.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * The chance of each of several references that it lands closest to the new product. Either the new product is one of them,
 * measured again: then that one is the closest ({@link SameProduct}). Or it is another one: then what was measured is drawn
 * anew within its error, what was not within the usual range of products, and the closest is counted.
 *
 * @param chances chance of each, in the order of the references; summing to 1
 * @param redraws how often the measurements were redrawn
 */
record ClosestShares(List<Double> chances, int redraws) {

    /** Redraws between two calls of the monitor. */
    static final int MONITOR_INTERVAL = 256;

    /** Figures of one product that are redrawn: granule density, median, spread. */
    private static final int FIGURES = 3;

    ClosestShares {
        chances = List.copyOf(chances);
    }

    /**
     * Simulates repeated measurements.
     *
     * @param product the new product
     * @param references the references; none gives an empty result
     * @param seed seed of the simulation
     * @param redraws how often the measurements are redrawn, at least 1
     * @param monitor called before every {@value #MONITOR_INTERVAL}th redraw; the first {@value #MONITOR_INTERVAL} are
     *     done whatever it answers
     */
    static ClosestShares simulate(
            LandingEstimate product,
            List<LandingEstimate> references,
            long seed,
            int redraws,
            ProgressMonitor monitor) {
        if (references.isEmpty()) {
            return new ClosestShares(List.of(), 0);
        }
        NormalizedGaussianSampler gauss =
                ZigguratSampler.NormalizedGaussian.of(RandomSource.XO_RO_SHI_RO_128_PP.create(seed));
        int[] firsts = new int[references.size()];
        int drawn = 0;
        while (drawn < redraws && continues(drawn, redraws, monitor)) {
            firsts[closest(product, references, gauss)]++;
            drawn++;
        }
        return new ClosestShares(chances(product, references, firsts, drawn), drawn);
    }

    private static List<Double> chances(
            LandingEstimate product, List<LandingEstimate> references, int[] firsts, double drawn) {
        double[] ln = references.stream()
                .mapToDouble(reference -> SameProduct.lnLikelihoodRatio(product.properties(), reference.properties()))
                .toArray();
        // over the likeliest, so that none overflows
        double most = Math.max(0, Arrays.stream(ln).max().orElseThrow());
        double[] same = Arrays.stream(ln)
                .map(value -> SameProduct.PRIOR / ln.length * Math.exp(value - most))
                .toArray();
        double another = (1 - SameProduct.PRIOR) * Math.exp(-most);
        double all = another + Arrays.stream(same).sum();
        List<Double> chances = new ArrayList<>();
        for (int i = 0; i < same.length; i++) {
            chances.add((same[i] + another * firsts[i] / drawn) / all);
        }
        return chances;
    }

    private static boolean continues(int drawn, int redraws, ProgressMonitor monitor) {
        return drawn % MONITOR_INTERVAL != 0 || monitor.shouldContinue(drawn / (double) redraws) || drawn == 0;
    }

    /** Index of the closest reference in one redraw; the errors of the new product are common to all references. */
    private static int closest(
            LandingEstimate product, List<LandingEstimate> references, NormalizedGaussianSampler gauss) {
        double[] own = product.drawnM(errors(gauss), 0);
        int closest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < references.size(); i++) {
            LandingEstimate reference = references.get(i);
            double packing = Comparison.packingError(
                    product.properties().form(), reference.properties().form());
            double distance = LandingEstimate.distanceM(own, reference.drawnM(errors(gauss), packing * gauss.sample()));
            if (distance < least) {
                least = distance;
                closest = i;
            }
        }
        return closest;
    }

    private static double[] errors(NormalizedGaussianSampler gauss) {
        double[] errors = new double[FIGURES];
        Arrays.setAll(errors, i -> gauss.sample());
        return errors;
    }
}
