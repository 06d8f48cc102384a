package org.evenfall.trays.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Prints the tables of {@link Ground} for 160 machines a family, of the bound, which is slow, for 20 and of the faults for 40. */
@Tag("proof")
class GroundProofTest {

    private static final int MACHINES = 160;
    private static final int FEWER = 40;
    private static final int FEW = 20;
    private static final long SEED = 1;

    @ParameterizedTest
    @EnumSource(Family.class)
    void prints(Family family) {
        List<Site> sites = family.sites(MACHINES, SEED, false);
        List<Site> fewer = sites.subList(0, FEWER);
        String table = Ground.loops(family, sites, Rules.QUICK)
                + Ground.loops(family, sites.subList(0, FEW), List.of(Rules.BOUND))
                + FaultTable.of(fewer);
        System.out.println(table);
        assertThat(table).contains("advice", "bound", "tray_zero");
    }
}
