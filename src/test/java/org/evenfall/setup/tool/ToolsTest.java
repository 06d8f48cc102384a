package org.evenfall.setup.tool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.Granule;
import org.evenfall.flight.Landing;
import org.evenfall.flight.Launch;
import org.evenfall.flight.Vane;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.WheelMarks;
import org.junit.jupiter.api.Test;

/** The calculators hand every number to the place it belongs to. */
class ToolsTest {

    private static final double G = FlightTool.GRAVITY_M_PER_S2;

    /** In vacuum: v² sin(2a)/g from level ground, and wind does not move the landing. */
    @Test
    void aFlightInVacuumIsAParabola() {
        Landing landing = FlightTool.flyWithConstantDrag(0, new Launch(20, 30, 0), new FlightTool.Conditions(3, -2, G));
        assertThat(landing.landingM()).isCloseTo(20 * 20 * Math.sin(Math.toRadians(60)) / G, offset(0.01));
        assertThat(landing.acrossM()).isCloseTo(0, offset(0.01));
    }

    @Test
    void windAlongAndAcrossAreNotExchanged() {
        Granule granule = new Granule(3.2, 1325, 1);
        Launch launch = new Launch(30, 10, 1);
        Landing calm = FlightTool.fly(granule, launch, new FlightTool.Conditions(0, 0, G));
        Landing along = FlightTool.fly(granule, launch, new FlightTool.Conditions(4, 0, G));
        Landing across = FlightTool.fly(granule, launch, new FlightTool.Conditions(0, 4, G));
        assertThat(along.landingM()).isGreaterThan(calm.landingM() + 1);
        assertThat(along.acrossM()).isCloseTo(0, offset(1e-9));
        assertThat(across.acrossM()).isGreaterThan(0.5);
    }

    @Test
    void aGranuleStaysOnADiscThatIsTooSlow() {
        Vane vane = new Vane(0.4, 0.1, 0, 0.5);
        assertThat(FlightTool.leaveVane(vane, 1, G)).isNull();
        assertThat(FlightTool.leaveVane(vane, 900, G)).isNotNull();
    }

    @Test
    void theTraysAreMovedOutOfTheWheelMarks() {
        TrayPlanTool.Trays trays = new TrayPlanTool.Trays(21, 0.4, 0.5);
        assertThat(trays.areaM2()).isCloseTo(0.2, offset(1e-12));
        TrayLayout layout = TrayPlanTool.layout(28, trays, DrivingPattern.BACK_AND_FORTH, new WheelMarks(2.4, 0.5));
        assertThat(layout.positionsM()).hasSize(21);
        assertThat(layout.moved()).isTrue();
    }

    /** 200 kg/ha on 0.2 m² are 4 g. */
    @Test
    void theCatchOfOneRunIsRateTimesArea() {
        CatchPlan plan = TrayPlanTool.runs(
                200, new TrayPlanTool.Trays(7, 0.4, 0.5), new SizeDistribution(3.2, 1.2, 0, 0, false), 1325, 0.1);
        assertThat(plan.catchPerRunG()).isCloseTo(4, offset(1e-9));
    }

    /** A column 100 mm high in a bore of 20 mm is 31.4 ml, at 0.75 kg/L 23.6 g. */
    @Test
    void aColumnInATubeIsAreaTimesHeightTimesDensity() {
        assertThat(TrayPlanTool.tubeG(100, 20, 0.75)).isCloseTo(Math.PI * 10 * 0.75, offset(1e-9));
    }
}
