package org.evenfall.trays;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * What each tray may hold given the others. With the covariance K of the trays under a prior and d their deviations, tray i
 * given the others is normal with the mean dᵢ − (K⁻¹d)ᵢ/(K⁻¹)ᵢᵢ and the variance 1/(K⁻¹)ᵢᵢ. The priors are weighed by their
 * likelihood of the other trays.
 *
 * <p>Source (from memory): Rasmussen and Williams 2006, leave-one-out formulas.
 */
final class TrayPredictions {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private final double[][] means;
    private final double[][] deviations;
    private final double[][] weights;

    private TrayPredictions(int trays) {
        int priors = FieldCvPrior.ALL.size();
        means = new double[trays][priors];
        deviations = new double[trays][priors];
        weights = new double[trays][priors];
    }

    /**
     * The predictions of a test.
     *
     * @param shapes see {@link FieldCvModes#at}
     * @param caught catch of each tray over the middle one
     * @param noise noise of the middle catch, share
     */
    static TrayPredictions of(double[][] shapes, double[] caught, double noise) {
        TrayPredictions all = new TrayPredictions(caught.length);
        FieldCvData data = new FieldCvData(shapes, caught, noise);
        for (int prior = 0; prior < FieldCvPrior.ALL.size(); prior++) {
            all.add(data, prior, caught, noise);
        }
        for (double[] ofTray : all.weights) {
            normalise(ofTray);
        }
        return all;
    }

    private void add(FieldCvData data, int index, double[] caught, double noise) {
        FieldCvPrior prior = FieldCvPrior.ALL.get(index);
        double[][] root = data.covariance(prior);
        SmallMatrix.decompose(root);
        double[] whitened = data.deviations();
        SmallMatrix.solve(root, whitened);
        double[][] inverseRoot = new double[root.length][root.length];
        double logLikelihood = prior.logProbability() - SmallMatrix.dot(whitened, whitened) / 2;
        for (int i = 0; i < root.length; i++) {
            inverseRoot[i][i] = 1;
            logLikelihood -= Math.log(root[i][i]);
        }
        SmallMatrix.solve(root, inverseRoot);
        double[] weighted = SmallMatrix.combine(whitened, inverseRoot);
        for (int tray = 0; tray < root.length; tray++) {
            double precision = 0;
            for (double[] row : inverseRoot) {
                precision += row[tray] * row[tray];
            }
            double off = weighted[tray] / precision;
            double mean = caught[tray] - off;
            // the noise is that of what is expected, not of what was read
            double variance = 1 / precision
                    - FieldCvData.noiseVariance(caught[tray], noise)
                    + FieldCvData.noiseVariance(mean, noise);
            means[tray][index] = mean;
            deviations[tray][index] = Math.sqrt(variance);
            weights[tray][index] = logLikelihood + off * off * precision / 2 - Math.log(precision) / 2;
        }
    }

    private static void normalise(double[] logWeights) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (double log : logWeights) {
            greatest = Math.max(greatest, log);
        }
        double sum = 0;
        for (int i = 0; i < logWeights.length; i++) {
            logWeights[i] = Math.exp(logWeights[i] - greatest);
            sum += logWeights[i];
        }
        for (int i = 0; i < logWeights.length; i++) {
            logWeights[i] /= sum;
        }
    }

    /** Probability that a tray, from 0, holds at most this much over the middle catch, 0 to 1. */
    double probabilityAtMost(int tray, double caught) {
        double sum = 0;
        for (int i = 0; i < weights[tray].length; i++) {
            if (weights[tray][i] > 0) {
                double z = (caught - means[tray][i]) / deviations[tray][i];
                sum += weights[tray][i] * NORMAL.cumulativeProbability(z);
            }
        }
        return Math.min(1, sum);
    }
}
