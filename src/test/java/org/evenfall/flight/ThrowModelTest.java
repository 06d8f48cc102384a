package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.evenfall.granule.SizeDistribution;
import org.junit.jupiter.api.Test;

class ThrowModelTest {

    private static final SizeDistribution UREA = new SizeDistribution(3.2, 1.2, 0.03, 0.05, false);

    @Test
    void theParts() {
        double speed = ThrowModel.outletSpeedMPerS(0.4, 850);
        Throw found = ThrowModel.of(new ThrowConditions(UREA, 1300, speed, 0.75), 40);
        assertThat(found.outletSpeedMPerS()).isEqualTo(speed);
        assertThat(found.medianM()).isCloseTo(ThrowModel.distanceM(3.2, 1300, speed, 0.75), within(1e-12));
        // 84 % of the mass is finer than d50 × g^0.99446
        assertThat(found.edgeM())
                .isCloseTo(ThrowModel.distanceM(3.2 * Math.pow(1.2, 0.994458), 1300, speed, 0.75), within(1e-4));
        assertThat(found.terminalVelocityMPerS())
                .isCloseTo(Flight.terminalVelocityMPerS(new Granule(3.2, 1300), 9.80665, Air.STANDARD), within(1e-9));
    }

    /** Errors of size and density in squares, each taken from flights one standard error off. */
    @Test
    void theStandardErrorFromFlightsOneErrorOff() {
        Throw found = ThrowModel.of(new ThrowConditions(UREA, 1300, 35, 0.75), 40);
        double bySize = (ThrowModel.distanceM(3.2 * Math.exp(0.03), 1300, 35, 0.75)
                        - ThrowModel.distanceM(3.2 * Math.exp(-0.03), 1300, 35, 0.75))
                / 2;
        double byDensity = (ThrowModel.distanceM(3.2, 1340, 35, 0.75) - ThrowModel.distanceM(3.2, 1260, 35, 0.75)) / 2;
        double both = Math.hypot(bySize, byDensity);
        assertThat(found.standardErrorM()).isCloseTo(both, within(0.05 * both));
        assertThat(ThrowModel.of(new ThrowConditions(new SizeDistribution(3.2, 1.2, 0, 0, false), 1300, 35, 0.75), 0)
                        .standardErrorM())
                .isZero();
    }

    /** Source: Villette et al. 2010 (abstract): equivalent friction of ammonium nitrate 0.13, of NPK 0.14. */
    @Test
    void theUsualFrictionIsThatOfTwoGranules() {
        assertThat(ThrowModel.FRICTION).isBetween(0.13, 0.14);
    }

    /** 5° take-off: see throws.csv, 3.3 mm, 1 275 kg/m³, 1 m, 40 m/s. */
    @Test
    void theUsualTakeOff() {
        assertThat(ThrowModel.distanceM(3.3, 1275, 40, 1)).isCloseTo(15.964, within(0.005 * 15.964));
    }

    /** A radial vane with a long slide: the outlet speed is near ω R √2 less friction. */
    @Test
    void theOutletSpeedGrowsWithRadiusAndSpeed() {
        double omegaR = 850 * Math.PI / 30 * 0.4;
        assertThat(ThrowModel.outletSpeedMPerS(0.4, 850)).isBetween(1.2 * omegaR, Math.sqrt(2) * omegaR);
        assertThat(ThrowModel.outletSpeedMPerS(0.44, 850) / ThrowModel.outletSpeedMPerS(0.4, 850))
                .isCloseTo(1.1, within(1e-3));
    }

    /** Five flights give the throw of any speed between them. */
    @Test
    void theCurveThroughAFewFlightsIsTheFlight() {
        Granule granule = new Granule(3.2, 1300);
        ThrowCurve curve = ThrowCurve.of(granule, 20, 40, 5, 3, 0.75);
        for (double speed = 20; speed <= 40; speed += 2.3) {
            Launch launch = new Launch(Math.hypot(speed, 3), Math.toDegrees(Math.atan2(3, speed)), 0.75);
            Landing landing = Flight.fly(granule, launch, 0, Flight.GRAVITY_M_PER_S2, Air.STANDARD);
            assertThat(curve.distanceM(speed)).isCloseTo(landing.landingM(), within(1e-4 * landing.landingM()));
            assertThat(curve.timeS(speed)).isCloseTo(landing.timeS(), within(1e-4 * landing.timeS()));
        }
        ThrowCurve one = ThrowCurve.of(granule, 30, 30, 5, 3, 0.75);
        Launch launch = new Launch(Math.hypot(30, 3), Math.toDegrees(Math.atan2(3, 30)), 0.75);
        double landingM = Flight.fly(granule, launch, 0, Flight.GRAVITY_M_PER_S2, Air.STANDARD)
                .landingM();
        // one flight, in longer steps
        assertThat(one.distanceM(30)).isCloseTo(landingM, within(1e-4 * landingM));
    }
}
