package org.evenfall.trays;

import java.util.List;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * What the tests teach of one amplitude at settings of the levers: the posterior of a Gaussian process. With the covariance K of the tests, their
 * noise included, the covariances k of a setting with them, and y the tests less the line that was expected of them, the mean
 * at the setting is the line + kᵀK⁻¹y and its variance k₀ − kᵀK⁻¹k.
 *
 * <p>Source (from memory): Rasmussen and Williams 2006, Gaussian Processes for Machine Learning, chapter 2.
 */
final class AmplitudeModel {

    private final AmplitudePrior prior;
    private final double[] slopeVariance;
    private final List<double[]> settings;
    private final RealMatrix inverse;

    /**
     * A model of so many tests, at least one.
     *
     * @param slopeVariance of each lever, %²
     * @param settings of each test, steps of each lever from the settings now
     * @param noiseVariance of each test, %², above 0
     */
    AmplitudeModel(AmplitudePrior prior, double[] slopeVariance, List<double[]> settings, double[] noiseVariance) {
        this.prior = prior;
        this.slopeVariance = slopeVariance.clone();
        this.settings = List.copyOf(settings);
        double[][] covariance = new double[settings.size()][];
        for (int i = 0; i < covariance.length; i++) {
            covariance[i] = covariances(settings.get(i)).toArray();
            covariance[i][i] += noiseVariance[i];
        }
        this.inverse = new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance))
                .getSolver()
                .getInverse();
    }

    /**
     * The tests under one assumption of the slopes.
     *
     * @param slope expected of each lever, % of the mean a step up
     * @param weights K⁻¹y
     * @param logLikelihood of the tests, up to a constant that is common to all assumptions
     */
    @SuppressWarnings("ArrayRecordComponent")
    record Fit(double[] slope, RealVector weights, double logLikelihood) {}

    /** @param amplitudes of each test, % of the mean */
    Fit fit(double[] amplitudes, double[] slope) {
        double[] offLine = new double[amplitudes.length];
        for (int i = 0; i < offLine.length; i++) {
            offLine[i] = amplitudes[i] - line(slope, settings.get(i));
        }
        RealVector residuals = MatrixUtils.createRealVector(offLine);
        RealVector weights = inverse.operate(residuals);
        return new Fit(slope, weights, -residuals.dotProduct(weights) / 2);
    }

    /** Mean of the amplitude at a setting, % of the mean catch. */
    double mean(Fit fit, double[] setting) {
        return line(fit.slope(), setting) + covariances(setting).dotProduct(fit.weights());
    }

    /** Its variance there, %², without the noise of a test. */
    double variance(double[] setting) {
        RealVector with = covariances(setting);
        return Math.max(0, prior.covariance(setting, setting, slopeVariance) - with.dotProduct(inverse.operate(with)));
    }

    private RealVector covariances(double[] setting) {
        return MatrixUtils.createRealVector(settings.stream()
                .mapToDouble(test -> prior.covariance(setting, test, slopeVariance))
                .toArray());
    }

    private static double line(double[] slope, double[] setting) {
        double sum = 0;
        for (int j = 0; j < slope.length; j++) {
            sum += slope[j] * setting[j];
        }
        return sum;
    }
}
