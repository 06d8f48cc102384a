package org.evenfall.trays;

import java.util.Arrays;

/** The catches of one test, and what the priors make of them before they are weighed. */
final class FieldCvData {

    /** A tray that caught less than this share of the mean has the noise of one with this share. Assumption. */
    private static final double LEAST_NOISE_SHARE = 0.25;

    /** Smallest noise, share. Assumption: no tray is read more exactly; it keeps two trays at one place apart. */
    private static final double SMALLEST_NOISE = 0.001;

    private final double[][] shapes;
    private final double[] deviations;
    private final double[] noiseVariances;
    private final double[][][] covariances;

    /**
     * The data of a test.
     *
     * @param shapes see {@link FieldCvModes#at}
     * @param relative each catch over the mean of all
     * @param noise noise at the mean catch, share
     */
    FieldCvData(double[][] shapes, double[] relative, double noise) {
        this.shapes = shapes;
        deviations = Arrays.stream(relative).map(each -> each - 1).toArray();
        noiseVariances =
                Arrays.stream(relative).map(each -> noiseVariance(each, noise)).toArray();
        covariances = Arrays.stream(FieldCvPrior.COMPONENTS)
                .map(shares -> SmallMatrix.products(shapesTimes(shares), shapes))
                .toArray(double[][][]::new);
    }

    /**
     * Variance of counting and reading of one catch.
     *
     * @param relative the catch over the mean of all
     * @param noise noise at the mean catch, share
     */
    static double noiseVariance(double relative, double noise) {
        double sd = Math.max(noise, SMALLEST_NOISE);
        return sd * sd * Math.max(relative, LEAST_NOISE_SHARE);
    }

    /** Number of trays. */
    int trays() {
        return deviations.length;
    }

    /** Catch of each tray over the mean of all, less 1. */
    double[] deviations() {
        return deviations.clone();
    }

    /** Value of each shape at each tray (first index) times the variance of the shape. */
    double[][] shapesTimes(double[] variances) {
        return Arrays.stream(shapes)
                .map(row -> SmallMatrix.times(row, variances))
                .toArray(double[][]::new);
    }

    /** Covariance of the catches under a prior, lower triangle: of the field, and of the noise on the diagonal. */
    double[][] covariance(FieldCvPrior prior) {
        double[][] sum = new double[trays()][];
        for (int i = 0; i < trays(); i++) {
            sum[i] = new double[i + 1];
            for (int component = 0; component < covariances.length; component++) {
                double amount = prior.amount(component);
                if (amount > 0) {
                    SmallMatrix.addScaled(sum[i], amount, covariances[component][i]);
                }
            }
            sum[i][i] += noiseVariances[i];
        }
        return sum;
    }
}
