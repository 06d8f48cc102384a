package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.evenfall.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FlowsTest {

    /** Exact arithmetic: 100 kg/ha, 24 m, 12 km/h; 87 kg/ha, 21 m, 10 km/h; 200 lb/ac, 60 ft, 10 mph. */
    @Test
    void flowIsExact() {
        assertThat(Flows.kgPerMin(100, 24, 12)).isCloseTo(48.000, within(1e-9));
        assertThat(Flows.kgPerMin(87, 21, 10)).isCloseTo(30.450, within(1e-9));
        double kgPerMin = Flows.kgPerMin(
                Unit.LB_PER_AC.to(Unit.KG_PER_HA, 200), Unit.FT.to(Unit.M, 60), Unit.MPH.to(Unit.KM_PER_H, 10));
        assertThat(Unit.KG_PER_MIN.to(Unit.LB_PER_MIN, kgPerMin)).isCloseTo(242.424, within(1e-3));
    }

    @Test
    void flowAndRateAreInverse() {
        Random random = new Random(9);
        for (int i = 0; i < 500; i++) {
            double rate = 50 + 400 * random.nextDouble();
            double width = 9 + 40 * random.nextDouble();
            double speed = 5 + 15 * random.nextDouble();
            assertThat(Flows.kgPerHa(Flows.kgPerMin(rate, width, speed), width, speed))
                    .isCloseTo(rate, within(1e-9));
        }
    }

    @Test
    void speedOverAMeasuredLength() {
        assertThat(Flows.kmPerH(100, 30)).isCloseTo(12, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void refusesWhatIsNotAboveZero(double value) {
        assertThatThrownBy(() -> Flows.kmPerH(100, value)).hasMessageContaining("time");
        assertThatThrownBy(() -> Flows.kgPerHa(80, value, 10)).hasMessageContaining("width");
        assertThatThrownBy(() -> Flows.kgPerHa(80, 24, value)).hasMessageContaining("speed");
    }
}
