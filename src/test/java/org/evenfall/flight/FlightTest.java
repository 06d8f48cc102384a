package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class FlightTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/org/evenfall/flight/sphere-drag.csv", numLinesToSkip = 1)
    void dragAsPublished(double reynolds, double coefficient, double tolerancePercent, String source) {
        assertThat(source).isNotBlank();
        assertThat(SphereDrag.coefficient(reynolds))
                .isCloseTo(coefficient, within(coefficient * tolerancePercent / 100));
    }

    @Test
    void dragHasNoLargeStepsBetweenItsPieces() {
        for (double edge : new double[] {0.01, 20, 260, 1500, 12000, 44000}) {
            double below = SphereDrag.coefficient(edge * 0.999999);
            double above = SphereDrag.coefficient(edge * 1.000001);
            assertThat(Math.abs(above / below - 1)).as("at Re " + edge).isLessThan(0.015);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/org/evenfall/flight/constant-drag.csv", numLinesToSkip = 1)
    void constantDragAsComputedElsewhere(
            double speed,
            double angle,
            double drag,
            double height,
            double gravity,
            double landing,
            double tolerance,
            Double time,
            String source) {
        assertThat(source).isNotBlank();
        Landing found = Flight.flyConstantDrag(drag, new Launch(speed, angle, height), 0, gravity);
        assertThat(found.landingM()).isCloseTo(landing, within(tolerance));
        if (time != null) {
            assertThat(found.timeS()).isCloseTo(time, within(1e-5));
        }
    }

    /** Linear drag, closed form of science: v 30, 50 degrees, a 0.5 per s, g 9.8: T 3.641584 s, x 32.323315 m. */
    @Test
    void linearDragInClosedForm() {
        Landing found = Flight.fly(speed -> 0.5 / speed, new Launch(30, 50, 0), 0, 9.8);
        assertThat(found.timeS()).isCloseTo(3.641584, within(1e-5));
        assertThat(found.landingM()).isCloseTo(32.323315, within(1e-4));
    }

    /** Thrown up at its terminal velocity it returns at v_t/√2: Feynman algorithm notes, harfesoft.de. */
    @Test
    void thrownUpAtTerminalVelocityItReturnsSlower() {
        double terminal = 10;
        Landing found = Flight.flyConstantDrag(9.8 / (terminal * terminal), new Launch(terminal, 90, 0), 0, 9.8);
        assertThat(found.impactSpeedMPerS()).isCloseTo(terminal / Math.sqrt(2), within(1e-5));
    }

    /**
     * Measured terminal velocities, urea 8.53 m/s, calcium ammonium nitrate 12.43 m/s: Hula, Kroulik, Honzik 2017,
     * Critical velocity of solid mineral fertilizers in a vertical upward airstream and repose angle. Sizes of the
     * samples are not given, so the sphere only has to fall in the right neighbourhood and keep them apart.
     */
    @Test
    void ureaFallsSlowerThanDenseProduct() {
        double urea = SphereDrag.terminalVelocityMPerS(new Granule(2.53, 1325), 9.81, Air.STANDARD);
        double dense = SphereDrag.terminalVelocityMPerS(new Granule(3.6, 1850), 9.81, Air.STANDARD);
        assertThat(urea).isBetween(8.53 * 0.8, 8.53 * 1.2);
        assertThat(dense).isBetween(12.43 * 0.8, 12.43 * 1.2);
    }

    /** Hipparchus DormandPrince853 at 1e-12 on the seeded flights of {@link SeededFlights}. */
    @Test
    void againstAnIndependentIntegratorOnSeededCases() {
        for (SeededFlights.Case one : SeededFlights.of(500, 500)) {
            double found = Flight.fly(one.granule(), one.launch(), one.windMPerS(), 9.81, Air.STANDARD)
                    .landingM();
            double reference = SeededFlights.independent(one, 1e-12);
            assertThat(found).as(one.toString()).isCloseTo(reference, within(6e-6 * Math.abs(reference)));
        }
    }

    @Test
    void theTableIsTheCorrelation() {
        for (double reynolds = 0.002; reynolds < 1.9e5; reynolds *= 1.0037) {
            assertThat(DragTable.clock(SphereDrag.piece(reynolds), reynolds * reynolds)
                            * reynolds
                            * SphereDrag.coefficient(reynolds))
                    .as("Re " + reynolds)
                    .isCloseTo(1, within(1e-8));
        }
    }

    /** Diameters around which the terminal velocity lies on a joint of two pieces: the flight has to come down all the same. */
    @Test
    void aSpeedThatSettlesOnAJointStillLands() {
        for (double diameter = 0.3; diameter < 6; diameter += 0.0037) {
            Landing landing = Flight.fly(new Granule(diameter, 1300), new Launch(5, 0, 100), 0, 9.81, Air.STANDARD);
            double fall = SphereDrag.terminalVelocityMPerS(new Granule(diameter, 1300), 9.81, Air.STANDARD);
            assertThat(landing.impactSpeedMPerS()).as(diameter + " mm").isBetween(0.9 * fall, 1.02 * fall);
        }
    }

    /** Wind from any side against the equation of motion in space, stepped in tenths of a millisecond. */
    @Test
    void windAcrossAgainstTheMotionInSpace() {
        Random random = new Random(77);
        for (int i = 0; i < 40; i++) {
            double drag = 0.2 * random.nextDouble();
            double along = -8 + 16 * random.nextDouble();
            double across = -8 + 16 * random.nextDouble();
            Launch launch = new Launch(
                    10 + 30 * random.nextDouble(), -10 + 40 * random.nextDouble(), 0.3 + 1.7 * random.nextDouble());
            double[] landed = inSpace(drag, launch, along, across);
            Landing found = Flight.fly(speed -> drag, launch, along, across, 9.81);
            assertThat(found.landingM()).isCloseTo(landed[0], within(1e-5));
            assertThat(found.acrossM()).isCloseTo(landed[1], within(1e-5));
            assertThat(found.impactSpeedMPerS()).isCloseTo(landed[2], within(1e-4));
        }
    }

    private static double[] inSpace(double drag, Launch launch, double windAlong, double windAcross) {
        double angle = Math.toRadians(launch.angleDeg());
        double[] s = {
            0, 0, launch.heightM(), launch.speedMPerS() * Math.cos(angle), 0, launch.speedMPerS() * Math.sin(angle)
        };
        double h = 1e-4;
        while (true) {
            double[] next = step(s, h, drag, windAlong, windAcross);
            if (next[2] <= 0 && next[5] < 0) {
                next = step(s, h * s[2] / (s[2] - next[2]), drag, windAlong, windAcross);
                return new double[] {next[0], next[1], Math.hypot(Math.hypot(next[3], next[4]), next[5])};
            }
            s = next;
        }
    }

    /** One step of the classical fourth-order Runge-Kutta method. */
    private static double[] step(double[] s, double h, double drag, double windAlong, double windAcross) {
        double[][] k = new double[4][];
        double[] at = s;
        double[] share = {0, 0.5, 0.5, 1};
        for (int stage = 0; stage < 4; stage++) {
            if (stage > 0) {
                at = new double[6];
                for (int i = 0; i < 6; i++) {
                    at[i] = s[i] + share[stage] * h * k[stage - 1][i];
                }
            }
            double x = at[3] - windAlong;
            double y = at[4] - windAcross;
            double pull = drag * Math.sqrt(x * x + y * y + at[5] * at[5]);
            k[stage] = new double[] {at[3], at[4], at[5], -pull * x, -pull * y, -pull * at[5] - 9.81};
        }
        double[] next = new double[6];
        for (int i = 0; i < 6; i++) {
            next[i] = s[i] + h / 6 * (k[0][i] + 2 * k[1][i] + 2 * k[2][i] + k[3][i]);
        }
        return next;
    }

    /** Drag is proportional to the shape factor, so it acts as the inverse of the density. */
    @Test
    void shapeFactorActsAsLessDensity() {
        Launch launch = new Launch(32, 5, 0.8);
        double rough = Flight.fly(new Granule(3.2, 1300, 1.25), launch, 0, 9.81, Air.STANDARD)
                .landingM();
        assertThat(rough).isCloseTo(landing(3.2, 1300 / 1.25, launch, 0), within(1e-9));
        assertThatThrownBy(() -> new Granule(3, 1300, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Smaller or lighter flies shorter; a third more speed gives only 17 to 27 % more throw (science, ordering). */
    @Test
    void orderingOfThrows() {
        Random random = new Random(11);
        for (int i = 0; i < 200; i++) {
            double d = 2 + 2.5 * random.nextDouble();
            double rho = 1100 + 800 * random.nextDouble();
            Launch launch =
                    new Launch(30 + 10 * random.nextDouble(), 10 * random.nextDouble(), 0.7 + random.nextDouble());
            double base = landing(d, rho, launch, 0);
            assertThat(landing(0.95 * d, rho, launch, 0)).isLessThan(base);
            assertThat(landing(d, 0.95 * rho, launch, 0)).isLessThan(base);
            assertThat(landing(d, rho, launch, 3)).isGreaterThan(base);
        }
        double slow = landing(3.3, 1300, new Launch(30, 5, 0.8), 0);
        double fast = landing(3.3, 1300, new Launch(40, 5, 0.8), 0);
        assertThat(fast / slow - 1).isBetween(0.10, 0.33);
    }

    private static double landing(double d, double rho, Launch launch, double wind) {
        return Flight.fly(new Granule(d, rho), launch, wind, 9.81, Air.STANDARD).landingM();
    }

    @Test
    void impossibleArgumentsAreProgrammingErrors() {
        assertThatThrownBy(() -> new Granule(0, 1300)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Launch(30, 91, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Flight.flyConstantDrag(-1, new Launch(30, 0, 1), 0, 9.81))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SphereDrag.coefficient(0)).isInstanceOf(IllegalArgumentException.class);
    }
}
