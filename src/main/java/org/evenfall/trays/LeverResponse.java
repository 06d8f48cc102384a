package org.evenfall.trays;

import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.jspecify.annotations.Nullable;

/**
 * What the tests so far say of how the levers move the centre-overlap amplitude: a Bayesian linear model. Amplitude (% of
 * the mean) = level + Σ slope × (whole steps towards wider). The prior of a slope is broad: −3 ± 2.5 % a step (ours: a
 * wider setting takes from the centre); every test adds what its noise allows.
 */
final class LeverResponse {

    static final double PRIOR_SLOPE_PERCENT = -3;
    static final double PRIOR_SLOPE_SD_PERCENT = 2.5;
    private static final double PRIOR_LEVEL_SD_PERCENT = 60;

    private final List<Lever> levers;
    private final Map<String, Double> origin;
    private final RealMatrix covariance;
    private final RealVector mean;

    LeverResponse(List<AdviceInput.DoneTest> tests, List<Lever> levers) {
        this.levers = levers;
        this.origin = tests.get(tests.size() - 1).settings();
        int n = levers.size() + 1;
        RealMatrix precision = new Array2DRowRealMatrix(n, n);
        RealVector weighted = new ArrayRealVector(n);
        precision.setEntry(0, 0, 1 / (PRIOR_LEVEL_SD_PERCENT * PRIOR_LEVEL_SD_PERCENT));
        for (int j = 1; j < n; j++) {
            double weight = 1 / (PRIOR_SLOPE_SD_PERCENT * PRIOR_SLOPE_SD_PERCENT);
            precision.setEntry(j, j, weight);
            weighted.setEntry(j, weight * PRIOR_SLOPE_PERCENT);
        }
        for (AdviceInput.DoneTest test : tests) {
            Mode mode = centreOverlap(test.evenness());
            if (mode != null) {
                // 2 % beside the noise: a straight line is a model of a machine
                double weight = 1 / (mode.noisePercent() * mode.noisePercent() + 4);
                RealVector row = row(test.settings());
                precision = precision.add(row.outerProduct(row).scalarMultiply(weight));
                weighted = weighted.add(row.mapMultiply(weight * mode.amplitudePercent()));
            }
        }
        covariance = new LUDecomposition(precision).getSolver().getInverse();
        mean = covariance.operate(weighted);
    }

    static @Nullable Mode centreOverlap(Evenness evenness) {
        return evenness.modes().stream()
                .filter(mode -> mode.name().equals(Shapes.CENTRE_OVERLAP))
                .findFirst()
                .orElse(null);
    }

    /** Steps towards wider of each lever against the last test. */
    private RealVector row(Map<String, Double> settings) {
        double[] row = new double[levers.size() + 1];
        row[0] = 1;
        for (int j = 0; j < levers.size(); j++) {
            Lever lever = levers.get(j);
            Double now = settings.get(lever.label());
            Double then = origin.get(lever.label());
            row[j + 1] = now == null || then == null ? 0 : lever.widerSign() * (now - then) / lever.step();
        }
        return new ArrayRealVector(row, false);
    }

    /** Amplitude expected when one lever is moved so many steps towards wider from the last test, %. */
    double amplitude(int lever, int steps) {
        return mean.getEntry(0) + mean.getEntry(lever + 1) * steps;
    }

    /** Variance of that amplitude, %². */
    double variance(int lever, int steps) {
        return covariance.getEntry(0, 0)
                + 2 * steps * covariance.getEntry(0, lever + 1)
                + steps * steps * covariance.getEntry(lever + 1, lever + 1);
    }

    /** The tests say, with more than two standard errors, that a lever works against the direction its owner gave. */
    boolean contradicts(int lever) {
        return mean.getEntry(lever + 1) > 2 * Math.sqrt(covariance.getEntry(lever + 1, lever + 1));
    }
}
