package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.flight.DrivingPattern;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * One prior against the same model written with whole matrices of the general library. Source (from memory): Rasmussen and
 * Williams 2006, chapter 2.
 */
class FieldCvFitTest {

    private static final List<Double> PLACES = List.of(-14.0, -9.0, -4.0, 0.0, 5.0, 10.0, 14.0);
    private static final double[] RELATIVE = {0.8, 0.1, 1.2, 1.3, 1.4, 1.0, 1.2};
    private static final double NOISE = 0.05;

    @ParameterizedTest
    @EnumSource(
            value = DrivingPattern.class,
            names = {"BACK_AND_FORTH", "ROUND_AND_ROUND"})
    void theCumulantsAreThoseOfTheWholeMatrices(DrivingPattern driving) {
        double[][] shapes = FieldCvModes.at(PLACES, new Tramlines(28, driving));
        FieldCvData data = new FieldCvData(shapes, RELATIVE, NOISE);
        for (int i = 0; i < FieldCvPrior.ALL.size(); i += 7) {
            FieldCvPrior prior = FieldCvPrior.ALL.get(i);
            RealMatrix phi = MatrixUtils.createRealMatrix(shapes);
            RealMatrix lambda = MatrixUtils.createRealDiagonalMatrix(prior.variances());
            RealMatrix k = phi.multiply(lambda).multiplyTransposed(phi);
            RealVector r = MatrixUtils.createRealVector(RELATIVE).mapSubtract(1);
            for (int t = 0; t < RELATIVE.length; t++) {
                k.addToEntry(t, t, NOISE * NOISE * Math.max(RELATIVE[t], 0.25));
            }
            CholeskyDecomposition root = new CholeskyDecomposition(k, 1e-9, 0);
            RealMatrix gain =
                    lambda.multiplyTransposed(phi).multiply(root.getSolver().getInverse());
            RealVector mean = gain.operate(r);
            RealMatrix v = lambda.subtract(gain.multiply(phi).multiply(lambda));
            double level = 1 + mean.getEntry(0);
            int last = FieldCvModes.COUNT;
            RealVector mu = mean.getSubVector(1, last);
            RealMatrix inner = v.getSubMatrix(1, last, 1, last);
            RealMatrix square = inner.multiply(inner);
            PearsonIii expected = PearsonIii.of(
                    (mu.dotProduct(mu) + inner.getTrace()) / Math.pow(level, 2),
                    (2 * square.getTrace() + 4 * mu.dotProduct(inner.operate(mu))) / Math.pow(level, 4),
                    (8 * square.multiply(inner).getTrace() + 24 * mu.dotProduct(square.operate(mu)))
                            / Math.pow(level, 6));
            FieldCvFit fit = new FieldCvFit(data, prior);
            for (double cv = 0.05; cv < 0.6; cv += 0.05) {
                assertThat(fit.squareOfCv().probabilityAtMost(cv * cv))
                        .isCloseTo(expected.probabilityAtMost(cv * cv), within(1e-8));
            }
            double logLikelihood =
                    -0.5 * r.dotProduct(root.getSolver().solve(r)) - 0.5 * Math.log(root.getDeterminant());
            assertThat(fit.logWeight()).isCloseTo(prior.logProbability() + logLikelihood, within(1e-8));
        }
    }

    /** Mean 0, mean square 1 over the period, and at right angles to each other. */
    @ParameterizedTest
    @EnumSource(
            value = DrivingPattern.class,
            names = {"BACK_AND_FORTH", "ROUND_AND_ROUND"})
    void theShapesAreOrthonormalOverThePeriod(DrivingPattern driving) {
        int cells = 400;
        double periodM = driving == DrivingPattern.BACK_AND_FORTH ? 2 : 1;
        List<Double> places = java.util.stream.IntStream.range(0, cells)
                .mapToObj(i -> periodM * (i + 0.3) / cells)
                .toList();
        RealMatrix shapes = MatrixUtils.createRealMatrix(FieldCvModes.at(places, new Tramlines(1, driving)));
        RealMatrix products = shapes.transposeMultiply(shapes).scalarMultiply(1.0 / cells);
        RealMatrix identity = MatrixUtils.createRealIdentityMatrix(FieldCvModes.COUNT + 1);
        assertThat(products.subtract(identity).getNorm1()).isLessThan(1e-9);
    }
}
