package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.evenfall.flight.DrivingPattern;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpoiltTrayTest {

    private static Optional<SpoiltTray> of(double... grams) {
        return SpoiltTray.of(TestFields.uniformity(grams), TestFields.BACK_AND_FORTH);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6})
    void aTrayTypedAsZeroAsHalfOrTwice(int tray) {
        for (double factor : new double[] {0, 0.5, 2}) {
            double[] grams = {10.1, 9.8, 10, 10.3, 9.9, 10.2, 10};
            grams[tray] *= factor;
            SpoiltTray spoilt = of(grams).orElseThrow();
            assertThat(spoilt.index()).isEqualTo(tray);
            assertThat(spoilt.readG()).isCloseTo(grams[tray], within(1e-9));
            assertThat(spoilt.low()).isEqualTo(factor < 1);
            assertThat(spoilt.lowG()).isBetween(5.0, 9.0);
            assertThat(spoilt.highG()).isBetween(11.0, 16.0);
            assertThat(spoilt.twin()).isEqualTo(SpoiltTray.NO_TWIN);
        }
    }

    /** What the others allow is the limit itself: a catch inside is believed, a catch outside is not. */
    @ParameterizedTest
    @CsvSource({"1.01, true", "0.99, false"})
    void theLimitIsTheOneReported(double share, boolean believed) {
        double low = of(10.1, 9.8, 0, 10.3, 9.9, 10.2, 10).orElseThrow().lowG();
        assertThat(of(10.1, 9.8, low * share, 10.3, 9.9, 10.2, 10).isEmpty()).isEqualTo(believed);
    }

    @Test
    void smoothShapesAreBelieved() {
        assertThat(of(TestFields.CENTRE_HEAVY)).isEmpty();
        assertThat(of(13, 12, 11, 10, 9, 8, 7)).isEmpty();
        assertThat(of(8, 10.5, 11.5, 9, 11.5, 10.5, 8)).isEmpty();
        // more than half of the trays empty: nothing to go by
        assertThat(of(0, 0, 0, 0, 0, 10, 10)).isEmpty();
    }

    @Test
    void roundAndRoundTheOutermostTraysAreTwins() {
        Uniformity test = UniformityCalculator.of(
                TestFields.catches(DrivingPattern.ROUND_AND_ROUND, 4, 9.8, 10, 10.3, 9.9, 10.2, 10));
        SpoiltTray spoilt = SpoiltTray.of(test, TestFields.ROUND_AND_ROUND).orElseThrow();
        assertThat(spoilt.index() + spoilt.twin()).isEqualTo(6);
    }

    /** One prior against the textbook: the mean and variance of one of several normal variables given the others. */
    @Test
    void aPredictionByTheOtherRoute() {
        double[][] shapes = FieldCvModes.at(TestFields.places(7), TestFields.BACK_AND_FORTH);
        double[] caught = {0.9, 1, 1.1, 1.2, 1.05, 0.95, 0.9};
        int tray = 2;
        double sum = 0;
        double weights = 0;
        FieldCvData data = new FieldCvData(shapes, caught, 0.05);
        for (FieldCvPrior prior : FieldCvPrior.ALL) {
            double[][] full = SmallMatrix.full(data.covariance(prior));
            RealMatrix others = new Array2DRowRealMatrix(6, 6);
            RealVector with = new ArrayRealVector(6);
            RealVector read = new ArrayRealVector(6);
            for (int i = 0; i < 6; i++) {
                int a = i < tray ? i : i + 1;
                with.setEntry(i, full[a][tray]);
                read.setEntry(i, caught[a] - 1);
                for (int j = 0; j < 6; j++) {
                    others.setEntry(i, j, full[a][j < tray ? j : j + 1]);
                }
            }
            LUDecomposition lu = new LUDecomposition(others);
            RealVector solved = lu.getSolver().solve(read);
            double mean = 1 + with.dotProduct(solved);
            double variance = full[tray][tray]
                    - with.dotProduct(lu.getSolver().solve(with))
                    - FieldCvData.noiseVariance(caught[tray], 0.05)
                    + FieldCvData.noiseVariance(mean, 0.05);
            double weight =
                    Math.exp(prior.logProbability() - read.dotProduct(solved) / 2) / Math.sqrt(lu.getDeterminant());
            weights += weight;
            sum += weight
                    * org.apache.commons.statistics.distribution.NormalDistribution.of(mean, Math.sqrt(variance))
                            .cumulativeProbability(1.1);
        }
        assertThat(TrayPredictions.of(shapes, caught, 0.05).probabilityAtMost(tray, 1.1))
                .isCloseTo(sum / weights, within(1e-9));
    }
}
