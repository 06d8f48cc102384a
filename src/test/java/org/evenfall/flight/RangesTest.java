package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.evenfall.granule.SizeDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every range of the records of this package: at the limits, just inside and just outside. */
class RangesTest {

    private static final VaneSetting LONG = new VaneSetting(0.4, 0);
    private static final VaneSetting SHORT = new VaneSetting(0.32, 0);
    private static final SizeDistribution SIZES = new SizeDistribution(3.2, 1.2, 0.03, 0.05, false);
    private static final List<Fan> FANS = TwinDisc.usual(0.4, 850).fans();

    private static Arguments range(String name, double low, double high, DoubleFunction<Object> make) {
        return Arguments.of(name, low, high, make);
    }

    static Stream<Arguments> closed() {
        return Stream.of(
                range("outletSpeedMPerS", 1e-3, 100, v -> new Fan(true, v, 0, 24, 5, 0.5)),
                range("directionDeg", -90, 150, v -> new Fan(true, 30, v, 24, 5, 0.5)),
                range("spreadDeg", 1e-3, 60, v -> new Fan(true, 30, 0, v, 5, 0.5)),
                range("takeOffDeg", -30, 45, v -> new Fan(true, 30, 0, 24, v, 0.5)),
                range("share", 0, 1, v -> new Fan(true, 30, 0, 24, 5, v)),
                range("discRpm", 200, 1500, v -> new TwinDisc(LONG, SHORT, v, 0, 0, 0.5, 0)),
                range("dropPointDeg", -90, 90, v -> new TwinDisc(LONG, SHORT, 850, v, 0, 0.5, 0)),
                range("tiltDeg", -15, 15, v -> new TwinDisc(LONG, SHORT, 850, 0, v, 0.5, 0)),
                range("rightShare", 0, 1, v -> new TwinDisc(LONG, SHORT, 850, 0, 0, v, 0)),
                range("wornShare", 0, 0.3, v -> new TwinDisc(LONG, SHORT, 850, 0, 0, 0.5, v)),
                range("friction", 0, 1.5, v -> new Vane(0.4, 0.12, 0, v)),
                range("shapeFactor", 0.5, 5, v -> new Granule(3, 1300, v)),
                range("angleDeg", -90, 90, v -> new Launch(30, v, 1)),
                range("discSpacingM", 0, 4, v -> new PassConditions(FANS, 0.75, v, 3, 0, 0)),
                range("forwardMPerS", 0, 15, v -> new PassConditions(FANS, 0.75, 1, v, 0, 0)),
                range("windAlongMPerS", -15, 15, v -> new PassConditions(FANS, 0.75, 1, 3, v, 0)),
                range("windAcrossMPerS", -15, 15, v -> new PassConditions(FANS, 0.75, 1, 3, 0, v)));
    }

    @ParameterizedTest(name = "{0} {1} to {2}")
    @MethodSource
    void closed(String name, double low, double high, DoubleFunction<Object> make) {
        for (double allowed : new double[] {low, Math.nextUp(low), Math.nextDown(high), high}) {
            assertThatCode(() -> make.apply(allowed)).doesNotThrowAnyException();
        }
        refused(name, make, Math.nextDown(low), Math.nextUp(high), Double.NaN);
    }

    static Stream<Arguments> above0() {
        return Stream.of(
                range("diameterMm", 0, 0, v -> new Granule(v, 1300)),
                range("densityKgPerM3", 0, 0, v -> new Granule(3, v)),
                range("densityKgPerM3", 0, 0, v -> new Air(v, 1.8e-5)),
                range("viscosityPaS", 0, 0, v -> new Air(1.2, v)),
                range("heightM", 0, 0, v -> new PassConditions(FANS, v, 1, 3, 0, 0)),
                range("particleDensityKgPerM3", 0, 0, v -> new ThrowConditions(SIZES, v, 30, 1)),
                range("outletSpeedMPerS", 0, 0, v -> new ThrowConditions(SIZES, 1300, v, 1)),
                range("heightM", 0, 0, v -> new ThrowConditions(SIZES, 1300, 30, v)));
    }

    @ParameterizedTest(name = "{0} above 0")
    @MethodSource
    void above0(String name, double low, double high, DoubleFunction<Object> make) {
        assertThatCode(() -> make.apply(Double.MIN_VALUE)).doesNotThrowAnyException();
        refused(name, make, 0, -Double.MIN_VALUE, Double.NaN);
    }

    static Stream<Arguments> atLeast0() {
        return Stream.of(
                range("speedMPerS", 0, 0, v -> new Launch(v, 0, 1)), range("heightM", 0, 0, v -> new Launch(30, 0, v)));
    }

    @ParameterizedTest(name = "{0} at least 0")
    @MethodSource
    void atLeast0(String name, double low, double high, DoubleFunction<Object> make) {
        assertThatCode(() -> make.apply(0)).doesNotThrowAnyException();
        refused(name, make, -Double.MIN_VALUE, Double.POSITIVE_INFINITY, Double.NaN);
    }

    private static void refused(String name, DoubleFunction<Object> make, double... values) {
        for (double value : values) {
            assertThatThrownBy(() -> make.apply(value))
                    .as(name + " " + value)
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining(name);
        }
    }

    @Test
    void theHighestDiscs() {
        assertThatCode(() -> new PassConditions(FANS, 5, 1, 3, 0, 0)).doesNotThrowAnyException();
        refused("heightM", v -> new PassConditions(FANS, v, 1, 3, 0, 0), Math.nextUp(5.0));
    }

    @Test
    void theSharesOfTheFansAddUpTo1() {
        Fan half = new Fan(true, 30, 0, 24, 5, 0.5);
        assertThatCode(() -> new PassConditions(List.of(half, half), 1, 1, 3, 0, 0))
                .doesNotThrowAnyException();
        Fan nearly = new Fan(true, 30, 0, 24, 5, 0.5 - 1.5e-12);
        assertThatCode(() -> new PassConditions(List.of(half, nearly), 1, 1, 3, 0, 0))
                .doesNotThrowAnyException();
        for (double other : new double[] {0.5 - 2.5e-12, 0.5 + 2.5e-12, 0.4, 0.6}) {
            Fan fan = new Fan(true, 30, 0, 24, 5, other);
            assertThatThrownBy(() -> new PassConditions(List.of(half, fan), 1, 1, 3, 0, 0))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("add up to 1");
        }
        assertThatThrownBy(() -> new PassConditions(List.of(), 1, 1, 3, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void vaneSettings() {
        assertThatCode(() -> new VaneSetting(Math.nextUp(0.1), 0)).doesNotThrowAnyException();
        assertThatCode(() -> new VaneSetting(1, 0)).doesNotThrowAnyException();
        refused("radiusM", v -> new VaneSetting(v, 0), 0.1, Math.nextUp(1.0), Double.NaN);
        assertThatCode(() -> new VaneSetting(0.4, Math.nextDown(0.1))).doesNotThrowAnyException();
        assertThatCode(() -> new VaneSetting(0.4, Math.nextUp(-0.1))).doesNotThrowAnyException();
        refused("pitchM", v -> new VaneSetting(0.4, v), 0.1, -0.1, Double.NaN);
    }

    @Test
    void aVaneNeedsOffsetBelowDropRadiusBelowRadius() {
        assertThatCode(() -> new Vane(0.4, 0.12, Math.nextDown(0.12), 0.1)).doesNotThrowAnyException();
        assertThatCode(() -> new Vane(0.4, 0.12, Math.nextUp(-0.12), 0.1)).doesNotThrowAnyException();
        refused("offsetM", v -> new Vane(0.4, 0.12, v, 0.1), 0.12, -0.12, Double.NaN);
        assertThatCode(() -> new Vane(0.4, Math.nextDown(0.4), 0, 0.1)).doesNotThrowAnyException();
        refused("dropRadiusM", v -> new Vane(0.4, v, 0, 0.1), 0.4, 0, Double.NaN);
    }

    @Test
    void aMessageHasNameLimitsAndValue() {
        assertThatThrownBy(() -> new Granule(3, 1300, 6)).hasMessage("shapeFactor must be 0.5 to 5.0: 6.0");
        assertThatThrownBy(() -> new Granule(-1, 1300)).hasMessage("diameterMm must be above 0: -1.0");
        assertThat(new Granule(3, 1300).shapeFactor()).isEqualTo(1);
    }
}
