package org.evenfall.trays.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The interval of the field CV on about 200 virtual machines; {@link FieldCvFullProofTest} runs all. Tagged slow to keep it
 * out of mutation testing.
 */
@Tag("slow")
class FieldCvProofTest {

    private static final int MACHINES_A_BAND = 14;
    private static final double WANTED_PERCENT = 85;

    private static List<Proof.Case> cases;

    @BeforeAll
    static void run() {
        cases = Proof.run(
                MACHINES_A_BAND, Proof.USUAL_FAMILIES, Set.of(TrayPlaces.SEVEN, TrayPlaces.THIRTEEN)::contains);
    }

    /** Lowest coverage that so many cases may have when the true one is 85 %: two standard errors less. */
    private static double least(int cases) {
        return WANTED_PERCENT - 2 * Math.sqrt(WANTED_PERCENT * (100 - WANTED_PERCENT) / cases);
    }

    @ParameterizedTest
    @EnumSource(
            value = TrayPlaces.class,
            names = {"SEVEN", "THIRTEEN"})
    void theIntervalHoldsTheTruth(TrayPlaces places) {
        for (String family : Proof.USUAL_FAMILIES) {
            List<Proof.Case> some = Proof.above5(cases, places).stream()
                    .filter(each -> each.family().equals(family))
                    .toList();
            assertThat(some).hasSize(4 * MACHINES_A_BAND);
            assertThat(Proof.coverage(some)).as(family).isGreaterThan(least(some.size()));
        }
        List<Proof.Case> all = Proof.above5(cases, places);
        assertThat(Proof.coverage(all)).isGreaterThan(least(all.size()));
    }

    /** Measured on many more machines: 12.5 and 5.6 points. */
    @Test
    void theIntervalIsNotWiderThanItMustBe() {
        assertThat(Proof.meanWidth(Proof.above5(cases, TrayPlaces.SEVEN))).isBetween(9.0, 15.0);
        assertThat(Proof.meanWidth(Proof.above5(cases, TrayPlaces.THIRTEEN))).isBetween(4.0, 7.5);
    }

    /** Where the estimate is sure it is right, nine times in ten. */
    @Test
    void theChanceOfAtMostFifteenIsRight() {
        List<Proof.Case> even = cases.stream()
                .filter(each -> each.estimate().probabilityAtMost15() >= 0.9)
                .toList();
        List<Proof.Case> uneven = cases.stream()
                .filter(each -> each.estimate().probabilityAtMost15() <= 0.1)
                .toList();
        assertThat(even).hasSizeGreaterThan(100);
        assertThat(uneven).hasSizeGreaterThan(100);
        assertThat(even.stream().filter(each -> each.truePercent() <= 15).count())
                .isGreaterThan(9L * even.size() / 10);
        assertThat(uneven.stream().filter(each -> each.truePercent() > 15).count())
                .isGreaterThan(9L * uneven.size() / 10);
    }

    /** Of two machines, the one that is called more even is so as often as is stated (90 %, came true in 92 % of 28 000 pairs): all pairs of one family and places. */
    @Test
    void theChanceThatOneIsMoreEvenComesTrue() {
        double stated = 0;
        int came = 0;
        int pairs = 0;
        for (TrayPlaces places : List.of(TrayPlaces.SEVEN, TrayPlaces.THIRTEEN)) {
            List<Proof.Case> some = Proof.above5(cases, places);
            for (int i = 0; i < some.size(); i++) {
                for (int k = 0; k < i; k++) {
                    double chance =
                            some.get(i).estimate().chanceLowerThan(some.get(k).estimate());
                    boolean first = chance > 0.5;
                    stated += first ? chance : 1 - chance;
                    came += (some.get(i).truePercent() < some.get(k).truePercent()) == first ? 1 : 0;
                    pairs++;
                }
            }
        }
        assertThat(came / (double) pairs).isCloseTo(stated / pairs, within(0.04));
    }
}
