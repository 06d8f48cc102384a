package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The match on simulated libraries of 12; {@link #allAsATable} prints more of them: {@code mvn -B -Pproof test}. */
class MatchProofTest {

    private static final int QUERIES = 400;

    /** Density weighed to 1 %, sizes to 1.5 %: three samples sieved, as the program asks. */
    private static final MatchProof CAREFUL = MatchProof.run(QUERIES, 5, 0.01, 0.015);

    /** Wanted are 95, 85 and 99 %; two standard errors of 200 new products less. */
    @Tag("slow")
    @Test
    void aProductMeasuredAgainComesFirst() {
        assertThat(CAREFUL.firstSieved.percent()).isGreaterThan(95 - 3.6);
        assertThat(CAREFUL.first.percent()).isGreaterThan(85 - 5);
        assertThat(CAREFUL.inThree.percent()).isGreaterThan(99 - 1.4);
    }

    /** Wanted within 7 points; and two standard errors. */
    @Tag("slow")
    @Test
    void aChanceComesTrueAsOftenAsStated() {
        for (MatchProof.Share share : CAREFUL.chances) {
            double stated = share.statedPercent();
            double error = Math.sqrt(stated * (100 - stated) / share.count());
            assertThat(share.count()).isGreaterThan(20);
            assertThat(share.percent()).isCloseTo(stated, within(7 + 2 * error));
        }
    }

    /** The program assumes a take-off of 5° and does not know the true one. */
    @Tag("slow")
    @ParameterizedTest
    @ValueSource(doubles = {0, 5, 10})
    void theIntervalOfAThrowDifferenceHoldsWhateverTheTakeOff(double takeOffDeg) {
        MatchProof proof = MatchProof.run(100, takeOffDeg, 0.015, 0.03);
        proof.covered.forEach(
                (known, share) -> assertThat(share.percent()).as(known.name()).isGreaterThan(90 - 4));
    }

    @Tag("proof")
    @Test
    void allAsATable() {
        for (double takeOffDeg : new double[] {0, 5, 10}) {
            for (double[] error : new double[][] {{0.01, 0.015}, {0.015, 0.03}}) {
                MatchProof proof = MatchProof.run(2000, takeOffDeg, error[0], error[1]);
                System.out.println(proof.table(
                        "take-off " + takeOffDeg + "°, errors of density " + error[0] + ", size " + error[1]));
                assertThat(proof.firstSieved.count()).isGreaterThan(500);
            }
        }
    }
}
