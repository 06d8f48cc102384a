package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class NearestProductsTest {

    private static final RankContext CONTEXT = RankContext.of(28, 0.40, 850.0, 950.0, 0.75, "");

    private static SizeDistribution sizes(double d50, double gsd) {
        return new SizeDistribution(d50, gsd, 0.03, 0.02, false);
    }

    private static TestedProduct tested(
            String id, double width, @Nullable Double density, @Nullable SizeDistribution sizes) {
        return new TestedProduct(id, "tested " + id, ProductForm.GRANULAR_UREA, width, density, sizes);
    }

    private static final Candidate UREA = new Candidate(ProductForm.GRANULAR_UREA, 0.75, 0.005, sizes(3.2, 1.2));

    private static MatchResult rank(TestedProduct... references) {
        return NearestProducts.rank(UREA, List.of(references), CONTEXT, 1, 400);
    }

    @Test
    void theSameProductHolds() {
        MatchResult match = rank(tested("same", 28, 0.75, sizes(3.2, 1.2)), tested("dense", 28, 1.0, sizes(3.6, 1.2)));
        assertThat(match.ranked().get(0).id()).isEqualTo("same");
        assertThat(match.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(match.direction()).isEqualTo(Direction.AS_IT_IS);
        assertThat(match.ranked().get(0).throwDifferenceM()).isCloseTo(0, within(1e-9));
        assertThat(match.ranked().get(0).closestShare()).isGreaterThan(0.99);
    }

    @Test
    void fivePercentLighterFallsALittleShort() {
        RankedReference first = rank(tested("heavier", 28, 0.75 / 0.95, sizes(3.2, 1.2)))
                .ranked()
                .get(0);
        assertThat(first.throwDifferenceM()).isBetween(-1.5, -0.1);
        assertThat(first.direction()).isEqualTo(Direction.WIDER);
        assertThat(first.throwLowM()).isLessThan(first.throwDifferenceM());
    }

    @Test
    void anotherWidthNeverHolds() {
        assertThat(rank(tested("same", 24, 0.75, sizes(3.2, 1.2))).verdict()).isEqualTo(Verdict.FIRST_GUESS_ONLY);
    }

    @Test
    void aReferenceWithLessKnownRanksBehindItsEqual() {
        MatchResult match = rank(
                tested("density only", 28, 0.75, null),
                tested("d50 only", 28, 0.75, new SizeDistribution(3.2, 1.2, 0.05, 0.08, false)),
                tested("sieved", 28, 0.75, sizes(3.2, 1.2)));
        assertThat(match.ranked())
                .extracting(RankedReference::id)
                .containsExactly("sieved", "d50 only", "density only");
        assertThat(match.ranked().get(2).verdict()).isEqualTo(Verdict.HOLD_AS_START);
        assertThat(match.ranked().get(2).spreadIndexDifference()).isNull();
    }

    @Test
    void withoutReferencesUreaStartsWiderThanTheDenseProduct() {
        MatchResult match = rank();
        assertThat(match.verdict()).isEqualTo(Verdict.NO_REFERENCE);
        assertThat(match.direction()).isEqualTo(Direction.WIDER);
        assertThat(match.throwAgainstDenseM()).isNegative();
        assertThat(match.chosen()).isNull();
    }

    @Test
    void fineGranulesDoNotReachAWideTramline() {
        Candidate fine = new Candidate(ProductForm.PRILLED_UREA, 0.72, 0.005, sizes(1.2, 1.2));
        RankContext wide = RankContext.of(36, 0.30, 700.0, 700.0, 0.75, "");
        MatchResult match = NearestProducts.rank(fine, List.of(), wide, 1, 10);
        assertThat(match.outOfReach()).isTrue();
        assertThat(match.verdict()).isEqualTo(Verdict.NOT_AT_THIS_WIDTH);
        assertThat(match.widestReachableM()).isLessThan(36);
        assertThat(rank().outOfReach()).isFalse();
    }

    @Test
    void theSameSeedGivesTheSameRanking() {
        TestedProduct[] references = {tested("a", 28, 0.76, sizes(3.1, 1.2)), tested("b", 28, 0.74, sizes(3.3, 1.2))};
        assertThat(rank(references)).isEqualTo(rank(references));
    }

    @Test
    void theChosenOneGivesTheVerdict() {
        RankContext chosen = RankContext.of(28, 0.40, 850.0, 950.0, 0.75, "dense");
        MatchResult match = NearestProducts.rank(
                UREA,
                List.of(tested("same", 28, 0.75, sizes(3.2, 1.2)), tested("dense", 28, 1.0, sizes(3.6, 1.2))),
                chosen,
                1,
                50);
        assertThat(match.chosen().id()).isEqualTo("dense");
        assertThat(match.verdict()).isEqualTo(Verdict.FIRST_GUESS_ONLY);
        assertThat(match.direction()).isEqualTo(Direction.WIDER);
    }
}
