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

    @Test
    void pitchedVaneAgainstTheSteppedEquation() {
        Random random = new Random(3);
        for (int i = 0; i < 100; i++) {
            double offset = -0.05 * random.nextDouble();
            Vane vane = new Vane(
                    0.3 + 0.2 * random.nextDouble(),
                    0.1 + 0.05 * random.nextDouble(),
                    offset,
                    0.5 * random.nextDouble());
            double omega = (500 + 600 * random.nextDouble()) * Math.PI / 30;
            VaneOutlet outlet = vane.outlet(omega * 30 / Math.PI, 9.81);
            double[] stepped = stepped(vane, omega);
            assertThat(outlet.timeS()).isCloseTo(stepped[0], within(1e-6));
            assertThat(outlet.radialMPerS()).isCloseTo(stepped[1], within(1e-4));
        }
    }

    /** x″ + 2μω x′ − ω²(x + μc) + μg = 0 in very small steps. */
    private static double[] stepped(Vane vane, double omega) {
        double mu = vane.friction();
        double c = vane.offsetM();
        double x = Math.sqrt(vane.dropRadiusM() * vane.dropRadiusM() - c * c);
        double end = Math.sqrt(vane.radiusM() * vane.radiusM() - c * c);
        double v = 0;
        double t = 0;
        double h = 1e-7;
        while (x < end) {
            double a = omega * omega * (x + mu * c) - mu * 9.81 - 2 * mu * omega * v;
            double mid = v + h / 2 * a;
            double a2 = omega * omega * (x + h / 2 * v + mu * c) - mu * 9.81 - 2 * mu * omega * mid;
            x += h * mid;
            v += h * a2;
            t += h;
        }
        double over = (x - end) / v;
        double last = omega * omega * (x + mu * c) - mu * 9.81 - 2 * mu * omega * v;
        return new double[] {t - over, (v - last * over) * end / vane.radiusM()};
    }

    @Test
    void aheadOfTheRadiusTheGranuleFirstSlidesFree() {
        VaneOutlet outlet = new Vane(0.40, 0.12, 0.03, 0.2).outlet(800, 9.81);
        assertThat(outlet.timeS()).isBetween(0.01, 0.06);
        assertThat(outlet.radialMPerS()).isBetween(15.0, 40.0);
        assertThat(outlet.tangentialMPerS()).isLessThan(0.40 * 800 * Math.PI / 30);
    }

    @Test
    void aGranuleThatStaysIsAProgrammingError() {
        Vane vane = new Vane(0.40, 0.01, 0, 1.5);
        assertThat(vane.moves(30, 9.81)).isFalse();
        assertThatThrownBy(() -> vane.outlet(30, 9.81)).isInstanceOf(IllegalArgumentException.class);
    }
}
