package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class VaneTest {

    /** Exact solution of the equation of motion, computed apart from the program: science, Flight. */
    @Test
    void radialVaneFromRest() {
        VaneOutlet outlet = new Vane(0.40, 0.10, 0, 0.30).outlet(800, 9.81);
        assertThat(outlet.timeS()).isCloseTo(0.029307, within(1e-6));
        assertThat(outlet.radialMPerS()).isCloseTo(24.6776, within(1e-4));
        assertThat(outlet.tangentialMPerS()).isCloseTo(33.5103, within(1e-4));
        assertThat(outlet.angleFromTangentDeg()).isCloseTo(36.369, within(1e-3));
    }

    /** Frictionless radial vane: v_r = ω √(R² − r₀²), exact. */
    @Test
    void withoutFrictionInClosedForm() {
        double omega = 800 * Math.PI / 30;
        VaneOutlet outlet = new Vane(0.40, 0.10, 0, 0).outlet(800, 9.81);
        assertThat(outlet.radialMPerS()).isCloseTo(omega * Math.sqrt(0.16 - 0.01), within(1e-9));
    }

    /** A radial vane throws towards 45° − ½ atan μ from the tangent, whatever the speed: exact limit of a long vane. */
    @Test
    void directionOfALongRadialVane() {
        for (double rpm : new double[] {500, 1000}) {
            VaneOutlet outlet = new Vane(0.40, 0.004, 0, 0.3).outlet(rpm, 1e-9);
            assertThat(outlet.angleFromTangentDeg()).isCloseTo(45 - Math.toDegrees(Math.atan(0.3)) / 2, within(0.02));
        }
    }

    /** A general-purpose integrator (Hipparchus) on vanes behind, on and ahead of the radius. */
    @Test
    void pitchedVanesAgainstAnIndependentIntegrator() {
        Random random = new Random(3);
        for (int i = 0; i < 60; i++) {
            double offset = i % 10 == 0 ? 0 : -0.07 + 0.14 * random.nextDouble();
            Vane vane = new Vane(
                    0.3 + 0.2 * random.nextDouble(),
                    0.1 + 0.05 * random.nextDouble(),
                    offset,
                    0.5 * random.nextDouble());
            double rpm = 500 + 600 * random.nextDouble();
            VaneOutlet outlet = vane.outlet(rpm, 9.81);
            IndependentVane other = IndependentVane.of(vane, rpm, 9.81);
            assertThat(outlet.timeS()).as(vane.toString()).isCloseTo(other.timeS(), within(1e-4 * other.timeS()));
            assertThat(outlet.radialMPerS()).as(vane.toString()).isCloseTo(other.radialMPerS(), within(2e-3));
            assertThat(outlet.tangentialMPerS()).isCloseTo(other.tangentialMPerS(), within(2e-3));
            assertThat(outlet.angleFromTangentDeg())
                    .isCloseTo(Math.toDegrees(Math.atan2(other.radialMPerS(), other.tangentialMPerS())), within(0.005));
        }
    }

    /** A vane far ahead: the granule passes the rim before the vane catches up, and is thrown without it. */
    @Test
    void farAheadTheGranuleMayLeaveWithoutTheVane() {
        Vane vane = new Vane(0.2, 0.15, 0.14, 0.1);
        VaneOutlet outlet = vane.outlet(800, 9.81);
        IndependentVane other = IndependentVane.of(vane, 800, 9.81);
        assertThat(other.y()).isGreaterThan(0.1401);
        assertThat(outlet.timeS()).isCloseTo(other.timeS(), within(1e-6));
        assertThat(outlet.radialMPerS()).isCloseTo(other.radialMPerS(), within(1e-3));
        assertThat(outlet.tangentialMPerS()).isCloseTo(other.tangentialMPerS(), within(1e-3));
    }

    /** Hardly ahead of the radius is hardly another vane than a radial one. */
    @Test
    void hardlyAheadIsNearlyRadial() {
        VaneOutlet radial = new Vane(0.40, 0.12, 0, 0.2).outlet(800, 9.81);
        VaneOutlet ahead = new Vane(0.40, 0.12, 1e-6, 0.2).outlet(800, 9.81);
        assertThat(ahead.timeS()).isCloseTo(radial.timeS(), within(1e-6));
        assertThat(ahead.radialMPerS()).isCloseTo(radial.radialMPerS(), within(1e-3));
    }

    /**
     * The border of motion: centrifugal acceleration against friction on the disc, and on the vane where it presses. By
     * hand: behind, ω² (√(r² − c²) + μ c) = μ g; ahead, ω² r = μ g.
     */
    @Test
    void whereAGranuleStartsToMove() {
        Vane behind = new Vane(0.4, 0.1, -0.06, 0.5);
        border(behind, Math.sqrt(0.5 * 9.81 / (0.08 - 0.03)));
        Vane ahead = new Vane(0.4, 0.1, 0.06, 0.5);
        border(ahead, Math.sqrt(0.5 * 9.81 / 0.1));
        Vane radial = new Vane(0.4, 0.1, 0, 0.5);
        border(radial, Math.sqrt(0.5 * 9.81 / 0.1));
    }

    private static void border(Vane vane, double omega) {
        double rpm = omega * 30 / Math.PI;
        assertThat(vane.moves(rpm * 0.999, 9.81)).isFalse();
        assertThat(vane.moves(rpm * 1.001, 9.81)).isTrue();
    }

    @Test
    void atTheBorderItStays() {
        // ω 10 per s, μ g = 1: exactly ω² r
        Vane vane = new Vane(0.4, 0.25, 0, 0.25);
        double rpm = 60 / Math.PI;
        assertThat(vane.moves(rpm, 4)).isFalse();
        assertThat(vane.moves(rpm, 3.9)).isTrue();
        assertThatThrownBy(() -> vane.outlet(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> vane.outlet(-800, 9.81)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aGranuleThatStaysIsAProgrammingError() {
        Vane vane = new Vane(0.40, 0.01, 0, 1.5);
        assertThat(vane.moves(30, 9.81)).isFalse();
        assertThatThrownBy(() -> vane.outlet(30, 9.81)).isInstanceOf(IllegalArgumentException.class);
    }
}
