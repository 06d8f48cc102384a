package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.flight.ThrowConditions;
import org.evenfall.granule.SizeDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShapeCurvesTest {

    @ParameterizedTest
    @CsvSource({"0, 10, 1", "2, 8, 2", "1, 9, 1.5", "4, 2, 5", "3, 5, 3.5", "-2, 12, 0", "6, -4, 8"})
    void straightBetweenGridPointsAndOnBeyondTheEnds(double at, double centre, double quarter) {
        ShapeCurve curve = new ShapeCurve(0, 2, new double[] {10, 8, 2}, new double[] {1, 2, 5});
        assertThat(curve.centrePercent(at)).isCloseTo(centre, within(1e-12));
        assertThat(curve.quarterPercent(at)).isCloseTo(quarter, within(1e-12));
        assertThat(curve.lowestDeg()).isZero();
        assertThat(curve.highestDeg()).isEqualTo(4);
    }

    @Test
    void aCurveNeedsARisingGridAndAsManyOfBoth() {
        assertThatThrownBy(() -> new ShapeCurve(0, 0, new double[2], new double[2]))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ShapeCurve(0, 1, new double[2], new double[3]))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ShapeCurve(0, 1, new double[1], new double[1]))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theBroadDefaultIsAStraightLine() {
        ShapeCurve line = ShapeCurves.broad().get(0);
        assertThat(ShapeCurves.broad()).hasSize(1);
        assertThat(line.lowestDeg()).isEqualTo(-65);
        assertThat(line.highestDeg()).isEqualTo(65);
        assertThat(line.centrePercent(10)).isCloseTo(-15, within(1e-12));
        assertThat(line.quarterPercent(10)).isZero();
    }

    /** On the ordinary run the centre loses to the overlap from narrow to wide, on every curve and for every width. */
    @ParameterizedTest
    @CsvSource({"18", "28", "36"})
    void theCurvesOfTheModelFall(double widthM) {
        List<ShapeCurve> curves =
                ShapeCurves.of(new ThrowConditions(SizeDistribution.exact(3.3, 1.2), 1300, 32, 0.75), widthM);
        assertThat(curves).hasSize(4);
        for (ShapeCurve curve : curves.subList(1, 4)) {
            assertThat(curve.lowestDeg()).isGreaterThanOrEqualTo(-25);
            assertThat(curve.highestDeg()).isLessThanOrEqualTo(90).isGreaterThan(curve.lowestDeg() + 15);
            int ordinary = 0;
            for (double deg = curve.lowestDeg(); deg < curve.highestDeg(); deg += 5) {
                if (curve.isOrdinary(deg) && curve.isOrdinary(deg + 5)) {
                    assertThat(curve.centrePercent(deg + 5)).isLessThan(curve.centrePercent(deg));
                    ordinary++;
                }
            }
            assertThat(ordinary).isGreaterThanOrEqualTo(3);
        }
    }
}
