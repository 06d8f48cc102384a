package org.evenfall.trays.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.evenfall.flight.DrivingPattern;
import org.evenfall.trays.Tramlines;
import org.junit.jupiter.api.Test;

/** The physics of the ballistic family and the field against figures from elsewhere. */
class GroundPhysicsTest {

    /**
     * Computed apart by a general integrator to 1e-13 and by quadrature of the hodograph: 30 m/s from 1 m, K 0.1/m,
     * g 9.81: 9.39025 m and 0.520244 s level, 13.81082 m and 1.018617 s at 10°.
     */
    @Test
    void dragThrowsAgreeWithAGeneralIntegrator() {
        DragThrows level = new DragThrows(0.1, 0, 1);
        assertThat(level.distanceM(30)).isCloseTo(9.39025, within(0.01));
        assertThat(level.timeS(30)).isCloseTo(0.520244, within(0.001));
        DragThrows up = new DragThrows(0.1, 10, 1);
        assertThat(up.distanceM(30)).isCloseTo(13.81082, within(0.01));
        assertThat(up.timeS(30)).isCloseTo(1.018617, within(0.001));
    }

    /** Exact: without friction a granule on a radial vane leaves at ω √(2R² − r²). */
    @Test
    void aRadialVaneWithoutFriction() {
        assertThat(new SmoothVane(0.1, 0.4, 0).speedPerTurnM()).isCloseTo(Math.sqrt(0.32 - 0.01), within(1e-12));
        assertThat(new SmoothVane(0.1, 0.4, 0.2).speedPerTurnM())
                .isGreaterThan(new SmoothVane(0.1, 0.4, 0).speedPerTurnM());
    }

    /** Exact: a cosine of amplitude a has a variation of a/√2. */
    @Test
    void variationOfACosine() {
        TrueField field = TrueField.of(
                new Tramlines(24, DrivingPattern.BACK_AND_FORTH), x -> 1 + 0.2 * Math.cos(2 * Math.PI * x / 24));
        assertThat(field.cvPercent()).isCloseTo(20 / Math.sqrt(2), within(1e-9));
        assertThat(field.overTray(0)).isCloseTo(1.2, within(0.002));
    }
}
