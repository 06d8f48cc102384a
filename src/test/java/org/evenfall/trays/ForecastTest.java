package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a CV may be after a move, and its distribution. */
class ForecastTest {

    private static ExpectedCv expected(Forecast forecast, double centre, double centreError) {
        CvDistribution distribution = new CvDistribution();
        forecast.add(distribution, 1, new Forecast.Amplitude(centre, centreError), new Forecast.Amplitude(0, 0));
        return distribution.expected();
    }

    /** Nothing but a known shape, without noise: its CV, to a tenth of a percent. */
    @ParameterizedTest
    @CsvSource({"14.2, 10", "-14.2, 10", "28.3, 20", "0, 0"})
    void aKnownShapeWithoutNoiseIsItsOwnCv(double centre, double cvPercent) {
        ExpectedCv cv = expected(new Forecast(EvenShapeVariance.ofField(0), 100, 0, 7), centre, 0);
        assertThat(cv.percent()).isCloseTo(cvPercent, within(0.11));
        assertThat(cv.intervalPercent().width()).isZero();
    }

    @Test
    void anUnknownShapeWidensTheInterval() {
        Forecast forecast = new Forecast(EvenShapeVariance.ofField(0), 100, 0, 7);
        assertThat(expected(forecast, 28.3, 3).intervalPercent().width()).isBetween(4.0, 8.0);
        assertThat(expected(forecast, 28.3, 9).intervalPercent().width()).isBetween(18.0, 25.0);
    }

    /** A reading has the noise of the trays in it: more of it, and more widely with fewer trays. */
    @Test
    void aReadingHasNoise() {
        ExpectedCv seven = expected(new Forecast(EvenShapeVariance.ofField(0), 100, 5, 7), 0, 0);
        ExpectedCv many = expected(new Forecast(EvenShapeVariance.ofField(0), 100, 5, 31), 0, 0);
        assertThat(seven.percent()).isCloseTo(5, within(0.2));
        assertThat(many.percent()).isCloseTo(5, within(0.2));
        assertThat(seven.intervalPercent().width())
                .isGreaterThan(1.8 * many.intervalPercent().width());
    }

    /** What the shapes do not explain falls with them, to a tenth of its square. */
    @ParameterizedTest
    @CsvSource({"20, 20", "0, 6.3"})
    void theRestFallsWithTheShapes(double centre, double rest) {
        ExpectedCv cv = expected(new Forecast(EvenShapeVariance.ofField(400), 200, 0, 7), centre, 0);
        assertThat(cv.percent()).isCloseTo(Math.hypot(rest, centre / Math.sqrt(2)), within(0.1));
        assertThat(cv.intervalPercent().low()).isLessThan(cv.percent());
    }

    /** Counted in tenths: the median of 1, 2, … 99 %, and the places of 5 and 95 %. */
    @Test
    void quantilesOfADistribution() {
        CvDistribution distribution = new CvDistribution();
        for (int percent = 1; percent <= 99; percent++) {
            distribution.add(percent, 2);
        }
        assertThat(distribution.expected().percent()).isCloseTo(50, within(0.11));
        assertThat(distribution.expected().intervalPercent().low()).isCloseTo(5, within(0.11));
        assertThat(distribution.expected().intervalPercent().high()).isCloseTo(95, within(0.11));
        CvDistribution heavy = new CvDistribution();
        heavy.add(10, 1);
        heavy.add(1e6, 30);
        assertThat(heavy.expected().percent()).isEqualTo(300);
        assertThat(heavy.expected().intervalPercent().low()).isEqualTo(300);
    }
}
