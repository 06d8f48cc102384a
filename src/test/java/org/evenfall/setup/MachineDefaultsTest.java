package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.evenfall.flight.ThrowConditions;
import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.machine.MachineProfile;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The disc and the height with which the flight model computes. */
class MachineDefaultsTest {

    static MachineProfile machine(@Nullable Double radiusM, @Nullable Double discRpm, @Nullable Double heightM) {
        return new MachineProfile("", List.of(), radiusM, discRpm, null, null, 2, heightM, List.of(), List.of(), null);
    }

    @Test
    void whatIsKnownOfTheMachineComesFirst() {
        assertThat(MachineDefaults.of(machine(0.31, 970.0, 0.92))).isEqualTo(new MachineDefaults(0.31, 970, 0.92));
    }

    /** Usual: radius 0.40 m, 850 rpm, 0.75 m over the crop. */
    @Test
    void whatIsNotKnownIsUsual() {
        assertThat(MachineDefaults.of(machine(null, null, null))).isEqualTo(new MachineDefaults(0.40, 850, 0.75));
        assertThat(MachineDefaults.of(machine(null, 970.0, null))).isEqualTo(new MachineDefaults(0.40, 970, 0.75));
    }

    @Test
    void theThrowHasTheOutletSpeedOfTheDisc() {
        SizeDistribution sizes = SizeDistribution.exact(3.2, 1.2);
        assertThat(new MachineDefaults(0.31, 970, 0.92).throwOf(sizes, 1325))
                .isEqualTo(new ThrowConditions(sizes, 1325, ThrowModel.outletSpeedMPerS(0.31, 970), 0.92));
    }
}
