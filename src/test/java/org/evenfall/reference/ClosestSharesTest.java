package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClosestSharesTest {

    private static final Comparisons UREA = Comparisons.of(Examples.urea(0.75, 3.2), Examples.FIELD);

    private static List<LandingEstimate> of(double... densities) {
        List<TestedProduct> references = new ArrayList<>();
        for (double density : densities) {
            references.add(Examples.tested(28, density, 3.2));
        }
        return UREA.with(references).stream()
                .map(comparison -> comparison.landing)
                .toList();
    }

    private static ClosestShares simulate(
            List<LandingEstimate> references, long seed, int redraws, ProgressMonitor monitor) {
        return ClosestShares.simulate(UREA.landing(), references, seed, redraws, monitor);
    }

    @Test
    void noReferencesNoRedraws() {
        assertThat(simulate(List.of(), 1, 100, ProgressMonitor.NONE)).isEqualTo(new ClosestShares(List.of(), 0));
    }

    @Test
    void oneReferenceIsAlwaysTheClosest() {
        ClosestShares found = simulate(of(0.9), 1, 100, ProgressMonitor.NONE);
        assertThat(found.chances())
                .singleElement()
                .satisfies(chance -> assertThat(chance).isCloseTo(1, within(1e-12)));
        assertThat(found.redraws()).isEqualTo(100);
    }

    /** 4000 redraws: three standard errors of a share of a half are 0.024. */
    @Test
    void equalReferencesShareTheFirstPlaceAndAFarOneHasNone() {
        ClosestShares found = simulate(of(0.76, 0.76, 0.55), 5, 4000, ProgressMonitor.NONE);
        assertThat(found.redraws()).isEqualTo(4000);
        assertThat(found.chances().get(0)).isCloseTo(0.5, within(0.024));
        assertThat(found.chances().stream().mapToDouble(chance -> chance).sum()).isCloseTo(1, within(1e-9));
        assertThat(found.chances().get(2)).isLessThan(1e-4);
    }

    @Test
    void theNearerIsMoreOftenTheClosest() {
        ClosestShares found = simulate(of(0.76, 0.79), 5, 2000, ProgressMonitor.NONE);
        assertThat(found.chances().get(0)).isBetween(0.6, 0.95);
    }

    /**
     * The chance of being the same product measured again, with P = ½ / n and the ratios by {@link SameProduct}, and the
     * share of the redraws otherwise.
     */
    @Test
    void sameProductOrAnother() {
        List<LandingEstimate> references = of(0.75, 0.80);
        double first = Math.exp(SameProduct.lnLikelihoodRatio(
                UREA.landing().properties(), references.get(0).properties()));
        double second = Math.exp(SameProduct.lnLikelihoodRatio(
                UREA.landing().properties(), references.get(1).properties()));
        assertThat(first).isGreaterThan(5 * second);
        ClosestShares found = simulate(references, 5, 4000, ProgressMonitor.NONE);
        double total = 0.5 + 0.25 * first + 0.25 * second;
        double share = (found.chances().get(1) * total - 0.25 * second) / 0.5;
        assertThat(share).isBetween(0.02, 0.3);
        assertThat(found.chances().get(0)).isCloseTo((0.25 * first + 0.5 * (1 - share)) / total, within(1e-9));
    }

    @Test
    void aProductFarFromAllUsualOnesOverflowsNothing() {
        Comparisons odd = Comparisons.of(Examples.urea(0.02, 40), Examples.FIELD);
        LandingEstimate same = odd.with(List.of(Examples.tested(28, 0.02, 40))).get(0).landing;
        LandingEstimate far = odd.with(List.of(Examples.tested(28, 1, 3))).get(0).landing;
        assertThat(ClosestShares.simulate(odd.landing(), List.of(far, same), 1, 10, ProgressMonitor.NONE)
                        .chances())
                .satisfiesExactly(
                        none -> assertThat(none).isLessThan(1e-9),
                        all -> assertThat(all).isCloseTo(1, within(1e-9)));
    }

    @Test
    void oneSeedOneAnswer() {
        assertThat(simulate(of(0.76, 0.77), 9, 900, ProgressMonitor.NONE))
                .isEqualTo(simulate(of(0.76, 0.77), 9, 900, ProgressMonitor.NONE))
                .isNotEqualTo(simulate(of(0.76, 0.77), 10, 900, ProgressMonitor.NONE));
    }

    /** The monitor is asked before redraws 0, 256, 512 …; the first 256 are done whatever it answers. */
    @ParameterizedTest
    @CsvSource({"0, 256", "0.2, 256", "0.25, 256", "0.26, 512", "0.6, 768", "1, 1000"})
    void theMonitorEndsTheSimulation(double end, int redraws) {
        assertThat(simulate(of(0.76, 0.77), 1, 1000, done -> done < end).redraws())
                .isEqualTo(redraws);
    }

    @Test
    void theMonitorIsGivenTheShareDone() {
        List<Double> shares = new ArrayList<>();
        simulate(of(0.76), 1, 1000, shares::add);
        assertThat(shares).containsExactly(0.0, 0.256, 0.512, 0.768);
    }
}
