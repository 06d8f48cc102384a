package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClosestSharesTest {

    private static List<Comparison> of(double... densities) {
        List<TestedProduct> references = new ArrayList<>();
        for (double density : densities) {
            references.add(Examples.tested(28, density, 3.2));
        }
        return Comparisons.of(Examples.urea(0.75, 3.2), Examples.FIELD).nearestFirst(references);
    }

    @Test
    void noReferencesNoRedraws() {
        assertThat(ClosestShares.simulate(List.of(), 1, 100, ProgressMonitor.NONE))
                .isEqualTo(new ClosestShares(List.of(), 0));
    }

    @Test
    void oneReferenceIsAlwaysTheClosest() {
        assertThat(ClosestShares.simulate(of(0.9), 1, 100, ProgressMonitor.NONE))
                .isEqualTo(new ClosestShares(List.of(1.0), 100));
    }

    /** 4000 redraws: three standard errors of a share of a half are 0.024. */
    @Test
    void equalReferencesShareTheFirstPlaceAndAFarOneHasNone() {
        ClosestShares found = ClosestShares.simulate(of(0.76, 0.76, 1.1), 5, 4000, ProgressMonitor.NONE);
        assertThat(found.redraws()).isEqualTo(4000);
        assertThat(found.shares().get(0)).isCloseTo(0.5, within(0.024));
        assertThat(found.shares().get(1)).isCloseTo(1 - found.shares().get(0), within(1e-9));
        assertThat(found.shares().get(2)).isZero();
    }

    @Test
    void theNearerIsMoreOftenTheClosest() {
        ClosestShares found = ClosestShares.simulate(of(0.76, 0.79), 5, 2000, ProgressMonitor.NONE);
        assertThat(found.shares().get(0)).isBetween(0.55, 0.95);
    }

    @Test
    void oneSeedOneAnswer() {
        assertThat(ClosestShares.simulate(of(0.76, 0.77), 9, 300, ProgressMonitor.NONE))
                .isEqualTo(ClosestShares.simulate(of(0.76, 0.77), 9, 300, ProgressMonitor.NONE))
                .isNotEqualTo(ClosestShares.simulate(of(0.76, 0.77), 10, 300, ProgressMonitor.NONE));
    }

    /** The monitor is asked before redraws 0, 256, 512 …; the first 256 are done whatever it answers. */
    @ParameterizedTest
    @CsvSource({"0, 256", "0.2, 256", "0.25, 256", "0.26, 512", "0.6, 768", "1, 1000"})
    void theMonitorEndsTheSimulation(double end, int redraws) {
        assertThat(ClosestShares.simulate(of(0.76, 0.77), 1, 1000, done -> done < end)
                        .redraws())
                .isEqualTo(redraws);
    }

    @Test
    void theMonitorIsGivenTheShareDone() {
        List<Double> shares = new ArrayList<>();
        ClosestShares.simulate(of(0.76), 1, 1000, shares::add);
        assertThat(shares).containsExactly(0.0, 0.256, 0.512, 0.768);
    }
}
