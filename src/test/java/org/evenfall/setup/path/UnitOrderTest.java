package org.evenfall.setup.path;

import static org.assertj.core.api.Assertions.assertThat;

import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnitSystem;
import org.junit.jupiter.api.Test;

class UnitOrderTest {

    private static final Setup ACRE = StartPaths.UNITS.path().set(Setup.EMPTY, UnitSystem.ACRE);

    @Test
    void theUnitsChosenComeFirstAndAllStay() {
        assertThat(StartPaths.TRAMLINE_WIDTH.units(Setup.EMPTY)).containsExactly(Unit.M, Unit.FT);
        assertThat(StartPaths.TRAMLINE_WIDTH.units(ACRE)).containsExactly(Unit.FT, Unit.M);
        assertThat(RatePaths.SPEED.units(ACRE)).containsExactly(Unit.MPH, Unit.KM_PER_H, Unit.M_PER_S);
        assertThat(RatePaths.NITROGEN_RATE.units(ACRE)).containsExactly(Unit.LB_PER_AC, Unit.KG_PER_HA, Unit.UNITS);
        assertThat(ProductPaths.CONTAINER_FULL.units(ACRE)).containsExactly(Unit.G, Unit.KG);
    }

    /** A number without a unit, as a file may have it, means the first unit of its description whatever is chosen. */
    @Test
    void aNumberWithoutAUnitMeansTheSameInBoth() {
        Setup typed = StartPaths.TRAMLINE_WIDTH.path().set(ACRE, EnteredQuantity.parse("28"));
        assertThat(Assessor.assess(typed).tramlineWidthM()).isEqualTo(28);
    }
}
