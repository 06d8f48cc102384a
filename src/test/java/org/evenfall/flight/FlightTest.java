package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class FlightTest {

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
        Landing found = Flight.fly(v -> drag, new Launch(speed, angle, height), 0, 0, gravity);
        assertThat(found.landingM()).isCloseTo(landing, within(tolerance));
        if (time != null) {
            assertThat(found.timeS()).isCloseTo(time, within(1e-5));
        }
    }

    /** Linear drag, closed form of science: v 30, 50 degrees, a 0.5 per s, g 9.8: T 3.641584 s, x 32.323315 m. */
    @Test
    void linearDragInClosedForm() {
        Landing found = Flight.fly(speed -> 0.5 / speed, new Launch(30, 50, 0), 0, 0, 9.8);
        assertThat(found.timeS()).isCloseTo(3.641584, within(1e-5));
        assertThat(found.landingM()).isCloseTo(32.323315, within(1e-4));
    }

    /** Thrown up at its terminal velocity it returns at v_t/√2. Source: Feynman algorithm notes, harfesoft.de. */
    @Test
    void thrownUpAtTerminalVelocityItReturnsSlower() {
        double terminal = 10;
        Landing found = Flight.fly(v -> 9.8 / (terminal * terminal), new Launch(terminal, 90, 0), 0, 0, 9.8);
        assertThat(found.impactSpeedMPerS()).isCloseTo(terminal / Math.sqrt(2), within(1e-5));
    }

    /**
     * Source: measured terminal velocities, urea 8.53 m/s, calcium ammonium nitrate 12.43 m/s, Hůla, Kroulík, Honzík 2017,
     * Critical velocity of solid mineral fertilizers in a vertical upward airstream and repose angle. The sizes of the
     * samples are not given, and their drag is above that of a sphere, so the ratio 1.457 is checked, within 10 %.
     * Assumption: urea 2.5 mm (Cousins, Roberge, Tabil 2021) of 1 260 kg/m³, the dense product 3.6 mm of 1 750 kg/m³.
     */
    @Test
    void theRatioOfTwoMeasuredTerminalVelocities() {
        double urea = Flight.terminalVelocityMPerS(new Granule(2.53, 1260), 9.81, Air.STANDARD);
        double dense = Flight.terminalVelocityMPerS(new Granule(3.6, 1750), 9.81, Air.STANDARD);
        assertThat(dense / urea).isCloseTo(12.43 / 8.53, within(0.10 * 12.43 / 8.53));
    }

    /** Hipparchus DormandPrince853 on the seeded flights of {@link SeededFlights}; the wind comes from both sides. */
    @Test
    void againstAnIndependentIntegratorOnAFewSeededCases() {
        againstAnIndependentIntegrator(SeededFlights.of(40, 500));
    }

    @Test
    @Tag("slow")
    void againstAnIndependentIntegratorOnSeededCases() {
        againstAnIndependentIntegrator(SeededFlights.of(500, 500));
    }

    private static void againstAnIndependentIntegrator(List<SeededFlights.Case> cases) {
        for (SeededFlights.Case one : cases) {
            double found = Flight.fly(one.granule(), one.launch(), one.windMPerS(), 9.81, Air.STANDARD)
                    .landingM();
            double reference = SeededFlights.independent(one, 1e-12);
            assertThat(found).as(one.toString()).isCloseTo(reference, within(1e-4 * Math.abs(reference)));
        }
    }

    /** Diameters around which the terminal velocity is at a breakpoint of the drag law: the flight has to come down all the same. */
    @Test
    void aSpeedThatSettlesAtABreakpointStillLands() {
        for (double diameter = 0.3; diameter < 6; diameter += 0.0037) {
            Landing landing = Flight.fly(new Granule(diameter, 1300), new Launch(5, 0, 100), 0, 9.81, Air.STANDARD);
            double fall = Flight.terminalVelocityMPerS(new Granule(diameter, 1300), 9.81, Air.STANDARD);
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

    /**
     * Flights computed with the drag of Clift, Grace and Weber 1978, take-off 0, 5 and 10 degrees at 30, 40 and 50 m/s.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/org/evenfall/flight/throws.csv", numLinesToSkip = 1)
    void throwsAsComputedElsewhere(
            double diameter, double density, double speed, double angle, double height, double landing, String source) {
        assertThat(source).isNotBlank();
        assertThat(landing(diameter, density, new Launch(speed, angle, height), 0))
                .isCloseTo(landing, within(0.005 * landing));
    }

    /** Source: BIPM, The International System of Units (SI), resolution of the 3rd CGPM 1901: 980.665 cm/s². */
    @Test
    void standardGravity() {
        assertThat(Flight.GRAVITY_M_PER_S2).isEqualTo(980.665 / 100);
    }

    /** At the terminal velocity drag and weight are equal. */
    @Test
    void terminalVelocityBalancesTheWeight() {
        for (double diameter : new double[] {0.1, 1, 3.3, 8}) {
            Granule granule = new Granule(diameter, 1300, 1.1);
            double fall = Flight.terminalVelocityMPerS(granule, 9.81, Air.STANDARD);
            assertThat(SphereDrag.dragPerM(granule, fall, Air.STANDARD) * fall * fall)
                    .isCloseTo(9.81, within(0.02 * 9.81));
        }
        // away from a breakpoint the balance is exact
        double fall = Flight.terminalVelocityMPerS(new Granule(3.3, 1300), 9.81, Air.STANDARD);
        assertThat(SphereDrag.dragPerM(new Granule(3.3, 1300), fall, Air.STANDARD) * fall * fall)
                .isCloseTo(9.81, within(1e-6));
        assertThatThrownBy(() -> Flight.terminalVelocityMPerS(new Granule(0.0001, 1300), 9.81, Air.STANDARD))
                .isInstanceOf(org.hipparchus.exception.MathIllegalArgumentException.class);
    }

    @Test
    void onTheGroundAndNotUpwardItLandsAtOnce() {
        for (double angle : new double[] {0, -30}) {
            Landing found = Flight.fly(v -> 0.1, new Launch(20, angle, 0), 3, 2, 9.81);
            assertThat(found.landingM()).isZero();
            assertThat(found.acrossM()).isZero();
            assertThat(found.timeS()).isZero();
            assertThat(found.impactAngleDeg()).isCloseTo(-angle, within(1e-9));
        }
        assertThat(Flight.fly(v -> 0.1, new Launch(20, 0.1, 0), 0, 0, 9.81).landingM())
                .isPositive();
        assertThat(Flight.fly(v -> 0.1, new Launch(20, 0, 1e-3), 0, 0, 9.81).landingM())
                .isPositive();
    }

    /** Vacuum, closed form: dropped from h it takes √(2h/g) and comes down with √(2gh), straight. */
    @Test
    void droppedInVacuum() {
        Landing found = Flight.fly(v -> 0, new Launch(0, 0, 2), 0, 0, 9.81);
        assertThat(found.timeS()).isCloseTo(Math.sqrt(4 / 9.81), within(1e-9));
        assertThat(found.impactSpeedMPerS()).isCloseTo(Math.sqrt(4 * 9.81), within(1e-8));
        assertThat(found.impactAngleDeg()).isCloseTo(90, within(1e-9));
        assertThat(found.landingM()).isZero();
    }

    /** A granule dropped into wind is carried with it; across and along exchange when the wind turns. */
    @Test
    void droppedIntoWindItIsCarriedWithIt() {
        Granule granule = new Granule(1, 1300);
        Launch dropped = new Launch(0, 0, 50);
        Landing along = Flight.fly(granule, dropped, 4, 0, 9.81, Air.STANDARD);
        Landing across = Flight.fly(granule, dropped, 0, 4, 9.81, Air.STANDARD);
        assertThat(along.landingM()).isBetween(0.8 * 4 * along.timeS(), 4 * along.timeS());
        assertThat(across.acrossM()).isCloseTo(along.landingM(), within(1e-9));
        assertThat(across.landingM()).isCloseTo(0, within(1e-9));
        assertThat(Flight.fly(granule, dropped, 0, -4, 9.81, Air.STANDARD).acrossM())
                .isCloseTo(-across.acrossM(), within(1e-9));
    }

    /** Strong wind against a weak throw carries the granule back: it comes down against the throw. */
    @Test
    void windAgainstAWeakThrowBringsItBack() {
        Landing found = Flight.fly(new Granule(1, 1300), new Launch(3, 20, 2), -8, 9.81, Air.STANDARD);
        assertThat(found.landingM()).isNegative();
        assertThat(found.impactAngleDeg()).isBetween(91.0, 170.0);
    }

    @Test
    void withoutGravityNothingLands() {
        Launch launch = new Launch(30, 0, 1);
        assertThatThrownBy(() -> Flight.fly(v -> 0.1, launch, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("gravityMPerS2");
        assertThat(Flight.fly(v -> 0.1, launch, 0, 0, 1e-3).timeS()).isPositive();
    }

    @Test
    @Tag("slow")
    void aFlightThatNeverLandsIsGivenUp() {
        assertThatThrownBy(() -> Flight.fly(v -> 1e7, new Launch(0, 0, 1e6), 0, 0, 1e-3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("does not land");
    }
}
