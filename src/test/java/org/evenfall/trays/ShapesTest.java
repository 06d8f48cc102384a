package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.trays.TestFields.BACK_AND_FORTH;
import static org.evenfall.trays.TestFields.ROUND_AND_ROUND;
import static org.evenfall.trays.TestFields.WIDTH_M;
import static org.evenfall.trays.TestFields.list;
import static org.evenfall.trays.TestFields.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ShapesTest {

    private static List<Double> field(List<Double> positionsM, Tramlines tramlines, ShapeKind kind, double percent) {
        return positionsM.stream()
                .map(x -> 100 + percent * kind.at(x, tramlines))
                .toList();
    }

    @ParameterizedTest
    @EnumSource(ShapeKind.class)
    void aPureShapeIsFoundAndNothingElse(ShapeKind kind) {
        for (Tramlines tramlines : List.of(BACK_AND_FORTH, ROUND_AND_ROUND)) {
            if (tramlines == ROUND_AND_ROUND && kind == ShapeKind.SIDE_FINE_DETAIL) {
                continue;
            }
            // uneven places, so that no shape is orthogonal to another
            List<Double> positions = list(-13, -9, -4, -1, 2, 5, 8, 12.5);
            ShapeFit fit = Shapes.fit(positions, field(positions, tramlines, kind, -20), tramlines, 1);
            for (SpreadShape shape : fit.shapes()) {
                assertThat(shape.amplitudePercent())
                        .as(shape.kind().publishedName())
                        .isCloseTo(shape.kind() == kind ? -20 : 0, within(1e-9));
            }
            assertThat(fit.shape(kind)).isPresent();
        }
    }

    /** Exact: 0.4 sin 3πx/W at a place of a quarter width is 0.4 sin 3π/4; and so on. */
    @ParameterizedTest
    @CsvSource({
        "CENTRE_OVERLAP, 0, 0",
        "QUARTER_POINTS, -1, -1",
        "LEFT_RIGHT, 0.7071067811865476, 1",
        "OUTER_DETAIL, 0, 0",
        "SIDE_DETAIL, 0.7071067811865476, 0",
        "SIDE_FINE_DETAIL, -0.7071067811865476, 0"
    })
    void theShapesAtAQuarterOfTheWidth(ShapeKind kind, double backAndForth, double roundAndRound) {
        assertThat(kind.at(WIDTH_M / 4, BACK_AND_FORTH)).isCloseTo(backAndForth, within(1e-12));
        assertThat(kind.at(WIDTH_M / 4, ROUND_AND_ROUND)).isCloseTo(roundAndRound, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"5, 3, 3", "6, 3, 3", "7, 6, 5", "8, 6, 5"})
    void theDetailsNeedSevenTrays(int trays, int backAndForth, int roundAndRound) {
        assertThat(ShapeKind.fitted(BACK_AND_FORTH.pattern(), trays)).hasSize(backAndForth);
        assertThat(ShapeKind.fitted(ROUND_AND_ROUND.pattern(), trays)).hasSize(roundAndRound);
        assertThat(ShapeKind.fitted(BACK_AND_FORTH.pattern(), trays))
                .startsWith(ShapeKind.CENTRE_OVERLAP, ShapeKind.QUARTER_POINTS, ShapeKind.LEFT_RIGHT);
    }

    /**
     * Two trays a tenth of a millimetre apart separate the third even shape from the others, badly. The normal equations would
     * have the square of that, 1e-10, on the diagonal, and call the shapes dependent.
     */
    @Test
    void nearlyDependentShapesAreFittedWithALargeError() {
        List<Double> positions = list(-4, 0, 4.0001, 4, -4);
        List<Double> field = field(positions, BACK_AND_FORTH, ShapeKind.CENTRE_OVERLAP, 20);
        ShapeFit fit = Shapes.fit(positions, field, BACK_AND_FORTH, 3);
        SpreadShape centre = fit.shape(ShapeKind.CENTRE_OVERLAP).orElseThrow();
        assertThat(centre.amplitudePercent()).isCloseTo(20, within(1e-6));
        assertThat(centre.noisePercent()).isGreaterThan(1e4);
        assertThat(centre.significant()).isFalse();
    }

    @Test
    void dependentShapesAreNotFitted() {
        List<Double> positions = list(-4, 0, 4, 4, -4);
        assertThat(Shapes.fit(positions, list(90, 120, 90, 90, 110), BACK_AND_FORTH, 3)
                        .shapes())
                .isEmpty();
    }

    /** Published property of least squares: the standard errors are those of the scatter of the amplitudes. */
    @Test
    void theStandardErrorsComeTrue() {
        List<Double> positions = list(-13, -10, -6, -1, 2, 3, 7, 9, 12);
        List<SpreadShape> exact = Shapes.fit(
                        positions, field(positions, BACK_AND_FORTH, ShapeKind.LEFT_RIGHT, 10), BACK_AND_FORTH, 4)
                .shapes();
        Random random = new Random(31);
        int rounds = 1500;
        double[] squares = new double[exact.size()];
        for (int round = 0; round < rounds; round++) {
            List<Double> noisy = new ArrayList<>();
            for (double x : positions) {
                noisy.add(100 + 10 * ShapeKind.LEFT_RIGHT.at(x, BACK_AND_FORTH) + 4 * random.nextGaussian());
            }
            List<SpreadShape> fitted =
                    Shapes.fit(positions, noisy, BACK_AND_FORTH, 4).shapes();
            for (int j = 0; j < squares.length; j++) {
                double off = fitted.get(j).amplitudePercent() - exact.get(j).amplitudePercent();
                squares[j] += off * off;
            }
        }
        for (int j = 0; j < squares.length; j++) {
            double ratio = Math.sqrt(squares[j] / rounds) / exact.get(j).noisePercent();
            assertThat(ratio).as(exact.get(j).kind().publishedName()).isCloseTo(1, within(0.08));
        }
    }

    @ParameterizedTest
    @CsvSource({"1.99, false", "2, false", "2.01, true", "-2.01, true", "-2, false", "-1.99, false"})
    void significantIsAboveTwoStandardErrors(double amplitude, boolean significant) {
        SpreadShape shape = SpreadShape.of(ShapeKind.LEFT_RIGHT, amplitude, 1);
        assertThat(shape.significant()).isEqualTo(significant);
        assertThat(shape.significantSizePercent()).isEqualTo(significant ? Math.abs(amplitude) : 0);
    }

    @Test
    void onlySignificantShapesAreDrawnAroundTheMean() {
        List<Double> positions = places(7);
        List<Double> field = new ArrayList<>();
        for (double x : positions) {
            field.add(100
                    + 20 * ShapeKind.CENTRE_OVERLAP.at(x, BACK_AND_FORTH)
                    - 12 * ShapeKind.LEFT_RIGHT.at(x, BACK_AND_FORTH)
                    + ShapeKind.QUARTER_POINTS.at(x, BACK_AND_FORTH));
        }
        List<Double> drawn = Shapes.fit(positions, field, BACK_AND_FORTH, 3).significantPercent();
        // cos 2πx/W has the mean −1/7 on these places
        for (int i = 0; i < 7; i++) {
            double x = positions.get(i);
            assertThat(drawn.get(i))
                    .isCloseTo(
                            100
                                    + 20 * (ShapeKind.CENTRE_OVERLAP.at(x, BACK_AND_FORTH) + 1 / 7.0)
                                    - 12 * ShapeKind.LEFT_RIGHT.at(x, BACK_AND_FORTH),
                            within(1e-9));
        }
        assertThat(Shapes.fit(positions, field, BACK_AND_FORTH, 100).significantPercent())
                .isEmpty();
    }

    /** The covariances are those of the CV: a noise-free field of the two even shapes has the CV² they add up to. */
    @Test
    void theCovariancesAddUpToTheCv() {
        List<Double> positions = list(-13, -9, -4, 1, 3, 8, 14);
        double variance = 225
                        * Shapes.covariance(
                                positions, BACK_AND_FORTH, ShapeKind.CENTRE_OVERLAP, ShapeKind.CENTRE_OVERLAP)
                + 49 * Shapes.covariance(positions, BACK_AND_FORTH, ShapeKind.QUARTER_POINTS, ShapeKind.QUARTER_POINTS)
                - 2
                        * 15
                        * 7
                        * Shapes.covariance(
                                positions, BACK_AND_FORTH, ShapeKind.CENTRE_OVERLAP, ShapeKind.QUARTER_POINTS);
        List<Double> field = positions.stream()
                .map(x -> 100
                        + 15 * ShapeKind.CENTRE_OVERLAP.at(x, BACK_AND_FORTH)
                        - 7 * ShapeKind.QUARTER_POINTS.at(x, BACK_AND_FORTH))
                .toList();
        double mean = field.stream().mapToDouble(v -> v).average().orElseThrow();
        assertThat(Math.sqrt(variance)).isCloseTo(UniformityCalculator.cvPercent(field) * mean / 100, within(1e-9));
    }

    @Test
    void thePublishedNamesStay() {
        assertThat(ShapeKind.values())
                .extracting(ShapeKind::publishedName)
                .containsExactly(
                        "centre-overlap",
                        "quarter-points",
                        "left-right",
                        "outer-detail",
                        "side-detail",
                        "side-fine-detail");
    }
}
