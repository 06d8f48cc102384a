package org.evenfall.setup.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits as they are shown: no needless decimals, and never outside the true limits. */
class ShownLimitsTest {

    @ParameterizedTest
    @CsvSource({
        "9, 60, 9, 0, 60, 0",
        "0.15, 0.8, 0.15, 2, 0.8, 1",
        "29.5276, 196.8504, 30, 0, 196, 0",
        "5.9055, 31.4961, 6, 0, 31, 0",
        "15.000000000000002, 79.99999999999999, 15, 0, 80, 0",
        "-0.2, 1, -0.2, 1, 1, 0",
        "-19.6, -1.98, -19.6, 1, -2, 0",
        "0, 0.0005, 0, 0, 0.0005, 4"
    })
    void roundedInwards(double low, double high, double shownLow, int lowDecimals, double shownHigh, int highDecimals) {
        ShownLimits shown = ShownLimits.of(low, high, Unit.M);
        assertThat(shown.low().value()).isEqualTo(shownLow);
        assertThat(shown.low().decimals()).isEqualTo(lowDecimals);
        assertThat(shown.low().unit()).isEqualTo(Unit.NONE);
        assertThat(shown.high().value()).isEqualTo(shownHigh);
        assertThat(shown.high().decimals()).isEqualTo(highDecimals);
        assertThat(shown.high().unit()).isEqualTo(Unit.M);
    }

    /** Of every entry in every unit: typing a number that is shown as a limit is never refused. */
    @Test
    void everyLimitShownIsWithinTheLimits() {
        for (FilledSetup.Place place : FilledSetup.measured()) {
            for (Unit unit : place.entry().units(Setup.EMPTY)) {
                Range range = place.entry().range(Setup.EMPTY, new EnteredQuantity("1", unit));
                for (Limits limits : new Limits[] {range.possible(), range.usual()}) {
                    ShownLimits shown = range.in(unit, limits);
                    for (double value :
                            new double[] {shown.low().value(), shown.high().value()}) {
                        assertThat(limits.contain(unit.to(range.core(), value)))
                                .as(place.path() + " " + value + " " + unit)
                                .isTrue();
                    }
                    assertThat(unit.to(range.core(), shown.high().value()))
                            .isCloseTo(limits.high(), within(0.021 * Math.abs(limits.high())));
                }
            }
        }
    }
}
