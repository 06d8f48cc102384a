package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class TwinDiscTest {

    private static final VaneSetting LONG = new VaneSetting(0.4, 0);
    private static final VaneSetting SHORT = new VaneSetting(0.32, 0);

    private static List<Fan> fans(double rpm, double dropPoint, double tilt, double rightShare, double worn) {
        return new TwinDisc(LONG, SHORT, rpm, dropPoint, tilt, rightShare, worn).fans();
    }

    @Test
    void theUsualMachineIsEvenOnBothSides() {
        List<Fan> fans = TwinDisc.usual(0.4, 850).fans();
        assertThat(fans).extracting(Fan::right).containsExactly(false, false, true, true);
        double[] directions = {28, 14, 28, 14};
        double[] radii = {0.4, 0.32, 0.4, 0.32};
        for (int i = 0; i < 4; i++) {
            assertThat(fans.get(i).directionDeg()).isCloseTo(directions[i], within(1e-9));
            assertThat(fans.get(i).outletSpeedMPerS())
                    .isCloseTo(ThrowModel.outletSpeedMPerS(radii[i], 850), within(1e-9));
            assertThat(fans.get(i).takeOffDeg()).isEqualTo(5);
            assertThat(fans.get(i).share()).isEqualTo(0.25);
            assertThat(fans.get(i).spreadDeg()).isEqualTo(24);
        }
    }

    /** A drop point further outward turns every fan outward by the same angle, on both discs. */
    @Test
    void theDropPointTurnsEveryFanItsOwnWay() {
        List<Fan> fans = fans(850, 10, 0, 0.5, 0);
        assertThat(fans)
                .extracting(Fan::directionDeg)
                .allSatisfy(d -> assertThat(d).isGreaterThan(20));
        assertThat(fans.get(0).directionDeg()).isCloseTo(38, within(1e-9));
        assertThat(fans.get(1).directionDeg()).isCloseTo(24, within(1e-9));
        assertThat(fans.get(3).directionDeg()).isCloseTo(24, within(1e-9));
        assertThat(fans(850, -10, 0, 0.5, 0).get(2).directionDeg()).isCloseTo(18, within(1e-9));
    }

    @Test
    void theRightSideUpThrowsSteeperOnTheRight() {
        List<Fan> fans = fans(850, 0, 4, 0.5, 0);
        assertThat(fans).extracting(Fan::takeOffDeg).containsExactly(1.0, 1.0, 9.0, 9.0);
    }

    @Test
    void unequalOutletsShareTheStream() {
        List<Fan> fans = fans(850, 0, 0, 0.6, 0);
        double[] shares = {0.2, 0.2, 0.3, 0.3};
        for (int i = 0; i < 4; i++) {
            assertThat(fans.get(i).share()).isCloseTo(shares[i], within(1e-12));
        }
    }

    @Test
    void oneWornVaneSlowsOneFanOnly() {
        List<Fan> fans = fans(850, 0, 0, 0.5, 0.15);
        List<Fan> fresh = fans(850, 0, 0, 0.5, 0);
        assertThat(fans.get(0).outletSpeedMPerS()).isCloseTo(ThrowModel.outletSpeedMPerS(0.34, 850), within(1e-9));
        assertThat(fans.get(0).outletSpeedMPerS()).isLessThan(fresh.get(0).outletSpeedMPerS());
        assertThat(fans.subList(1, 4)).isEqualTo(fresh.subList(1, 4));
    }

    /** The time on a radial vane is a fixed part of a turn: another speed changes the throw, hardly the direction. */
    @Test
    void aFasterDiscThrowsFasterTheSameWay() {
        Fan slow = fans(600, 0, 0, 0.5, 0).get(0);
        Fan fast = fans(1200, 0, 0, 0.5, 0).get(0);
        assertThat(fast.outletSpeedMPerS() / slow.outletSpeedMPerS()).isCloseTo(2, within(0.01));
        assertThat(fast.directionDeg()).isCloseTo(28, within(0.5));
        // friction holds the granule longer on the slow disc: it leaves further round
        assertThat(slow.directionDeg()).isGreaterThan(28.05);
        assertThat(fast.directionDeg()).isLessThan(27.98);
    }

    /** The direction over the ground of a granule followed by a general-purpose integrator, from where it fell on. */
    @Test
    void aPitchedVaneTurnsItsFanAsTheMotionOverTheGround() {
        for (double pitch : new double[] {-0.06, -0.02, 0.02, 0.06}) {
            TwinDisc disc = new TwinDisc(new VaneSetting(0.4, pitch), SHORT, 900, 0, 0, 0.5, 0);
            double pitched = IndependentVane.of(new Vane(0.4, 0.12, pitch, 0.14), 900, Flight.GRAVITY_M_PER_S2)
                    .groundDirectionDeg();
            double radial = IndependentVane.of(new Vane(0.4, 0.12, 0, 0.14), 850, Flight.GRAVITY_M_PER_S2)
                    .groundDirectionDeg();
            List<Fan> fans = disc.fans();
            assertThat(fans.get(0).directionDeg()).as("pitch " + pitch).isCloseTo(28 + pitched - radial, within(0.01));
            assertThat(fans.get(2).directionDeg()).isEqualTo(fans.get(0).directionDeg());
            assertThat(fans.get(1).directionDeg()).isCloseTo(14, within(0.3));
            TwinDisc other = new TwinDisc(LONG, new VaneSetting(0.32, pitch), 900, 0, 0, 0.5, 0);
            assertThat(other.fans().get(0).directionDeg()).isCloseTo(28, within(0.3));
            assertThat(other.fans().get(1).directionDeg()).isNotCloseTo(14, within(0.3));
        }
    }

    /** Every pitch that a setting allows lets the granule meet the vane. */
    @Test
    void withinItsRangeEveryPitchMeetsTheVane() {
        for (double pitch = 0.001; pitch < 0.0999; pitch += 0.007) {
            double omega = 850 * Math.PI / 30;
            FreeSlide slide = new FreeSlide(0.4, pitch, 0.14, omega, 9.81);
            FreeSlide.State end = slide.from(Math.sqrt(0.12 * 0.12 - pitch * pitch));
            assertThat(slide.hasLeftDisc(end)).as("pitch " + pitch).isFalse();
            assertThat(end.y()).isCloseTo(pitch, within(1e-9));
        }
    }

    @Test
    void directionsStayInTheirRange() {
        TwinDisc outward = new TwinDisc(new VaneSetting(0.4, -0.09), SHORT, 850, 90, 0, 0.5, 0);
        TwinDisc inward = new TwinDisc(LONG, new VaneSetting(0.32, 0.079), 850, -90, 0, 0.5, 0);
        for (TwinDisc disc : List.of(outward, inward)) {
            assertThat(disc.fans())
                    .extracting(Fan::directionDeg)
                    .allSatisfy(d -> assertThat(d).isBetween(-90.0, 150.0));
        }
    }

    @Test
    void theShortVaneIsNotTheLongerOne() {
        assertThat(new TwinDisc(LONG, LONG, 850, 0, 0, 0.5, 0).fans()).hasSize(4);
        assertThatThrownBy(() -> new TwinDisc(LONG, new VaneSetting(0.4001, 0), 850, 0, 0, 0.5, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("short vane");
    }
}
