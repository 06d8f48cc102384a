package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.ParticleDensities;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProductRankingTest {

    private static final ProductForm UREA = ProductForm.GRANULAR_UREA;

    private static final RankContext FIELD = RankContext.of(28, 0.40, 850.0, null, 0.75, "");

    private static SizeDistribution sizes(double d50, double gsd) {
        return new SizeDistribution(d50, gsd, 0.015, 0.01, false);
    }

    private static Candidate urea(double density, double d50) {
        return new Candidate(UREA, density, 0.005, sizes(d50, 1.2));
    }

    private static TestedProduct tested(String id, double width, double density, double d50) {
        return new TestedProduct(id, id, UREA, width, density, sizes(d50, 1.2));
    }

    @Test
    void theSameProductHolds() {
        MatchResult match = ProductRanking.rank(
                urea(0.74, 3.2), List.of(tested("other", 28, 1.0, 3.5), tested("same", 28, 0.74, 3.2)), FIELD, 1, 400);
        assertThat(match.ranked().get(0).id()).isEqualTo("same");
        assertThat(match.ranked().get(0).landingDistanceM()).isZero();
        assertThat(match.ranked().get(0).throwDifference().metres()).isZero();
        assertThat(match.ranked().get(0).closestShare()).isGreaterThan(0.99);
        assertThat(match.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(match.direction()).isEqualTo(Direction.AS_IT_IS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2.5, 3.2, 4.0})
    void fivePercentLighterFallsSlightlyShortAndGoesWider(double d50) {
        RankedProduct first = ProductRanking.rank(
                        urea(0.95 * 0.76, d50), List.of(tested("a", 28, 0.76, d50)), FIELD, 1, 100)
                .ranked()
                .get(0);
        assertThat(first.throwDifference().metres()).isBetween(-0.8, -0.1);
        assertThat(first.difference().densityPercent()).isCloseTo(-5, within(1e-9));
        assertThat(first.difference().d50Percent()).isZero();
        assertThat(first.direction()).isEqualTo(Direction.WIDER);
        assertThat(first.verdict()).isEqualTo(Verdict.HOLD_AS_START);
    }

    @Test
    void fivePercentHeavierOrLargerGoesNarrower() {
        assertThat(ProductRanking.rank(urea(0.80, 3.2), List.of(tested("a", 28, 0.74, 3.2)), FIELD, 1, 100)
                        .direction())
                .isEqualTo(Direction.NARROWER);
        assertThat(ProductRanking.rank(urea(0.74, 3.5), List.of(tested("a", 28, 0.74, 3.2)), FIELD, 1, 100)
                        .direction())
                .isEqualTo(Direction.NARROWER);
    }

    @Test
    void anotherWidthNeverHoldsAndRanksBehindThisWidth() {
        MatchResult match = ProductRanking.rank(
                urea(0.74, 3.2), List.of(tested("wide", 36, 0.74, 3.2), tested("here", 28, 0.80, 3.4)), FIELD, 1, 400);
        assertThat(match.ranked()).extracting(RankedProduct::id).containsExactly("here", "wide");
        assertThat(match.ranked().get(1).verdict()).isEqualTo(Verdict.FIRST_GUESS_ONLY);
        assertThat(match.ranked().get(1).closestShare()).isZero();
        assertThat(ProductRanking.rank(urea(0.74, 3.2), List.of(tested("wide", 28.5, 0.74, 3.2)), FIELD, 1, 10)
                        .verdict())
                .isEqualTo(Verdict.FIRST_GUESS_ONLY);
        assertThat(ProductRanking.rank(urea(0.74, 3.2), List.of(tested("near", 28.2, 0.74, 3.2)), FIELD, 1, 10)
                        .ranked()
                        .get(0)
                        .sameWidth())
                .isTrue();
    }

    @Test
    void lessKnownMeansWiderAndNeverHolds() {
        TestedProduct full = tested("full", 28, 0.74, 3.2);
        TestedProduct median = new TestedProduct("median", "median", UREA, 28, 0.74, SizeDistribution.medianOnly(3.2));
        TestedProduct density = new TestedProduct("density", "density", UREA, 28, 0.74, null);
        TestedProduct nothing = new TestedProduct("nothing", "nothing", ProductForm.OTHER, 28, null, null);
        List<RankedProduct> ranked = ProductRanking.rank(
                        urea(0.74, 3.2), List.of(nothing, density, median, full), FIELD, 3, 400)
                .ranked();
        assertThat(ranked).extracting(RankedProduct::id).containsExactly("full", "median", "density", "nothing");
        for (int i = 1; i < 4; i++) {
            assertThat(width(ranked.get(i))).isGreaterThan(width(ranked.get(i - 1)));
            assertThat(ranked.get(i).verdict()).isNotEqualTo(Verdict.HOLD);
        }
        assertThat(ranked.get(1).difference().spreadIndexPoints()).isNull();
        assertThat(ranked.get(2).difference().d50Percent()).isNull();
        assertThat(ranked.get(3).difference().densityPercent()).isNull();
        assertThat(ranked.get(3).difference().flowPercent()).isNull();
    }

    private static double width(RankedProduct reference) {
        return reference.throwDifference().intervalM().width();
    }

    @Test
    void noReferenceStartsFromTheThrowOfADenseProduct() {
        MatchResult light = ProductRanking.rank(urea(0.74, 3.2), List.of(), FIELD, 1, 1);
        assertThat(light.verdict()).isEqualTo(Verdict.NO_REFERENCE);
        assertThat(light.chosen()).isNull();
        assertThat(light.direction()).isEqualTo(Direction.WIDER);
        assertThat(light.throwAgainstDenseM()).isNegative();
        assertThat(light.outOfReach()).isFalse();
        MatchResult densityOnly = ProductRanking.rank(new Candidate(UREA, 0.74, 0.01, null), List.of(), FIELD, 1, 1);
        assertThat(densityOnly.direction()).isEqualTo(Direction.WIDER);
        MatchResult dense = ProductRanking.rank(
                new Candidate(ProductForm.CALCIUM_AMMONIUM_NITRATE, 1.0, 0.01, null), List.of(), FIELD, 1, 1);
        assertThat(dense.throwAgainstDenseM()).isCloseTo(0, within(1e-9));
        assertThat(dense.direction()).isEqualTo(Direction.AS_IT_IS);
    }

    @Test
    void nothingMeasuredRanksNothing() {
        MatchResult match = ProductRanking.rank(
                new Candidate(UREA, null, 0, null), List.of(tested("a", 28, 0.74, 3.2)), FIELD, 1, 10);
        assertThat(match.ranked()).isEmpty();
        assertThat(match.verdict()).isEqualTo(Verdict.NO_REFERENCE);
    }

    @Test
    void theChosenOneGivesTheVerdictAndAnUnknownChoiceTheBest() {
        List<TestedProduct> library = List.of(
                tested("near", 28, 0.74, 3.2),
                new TestedProduct("far", "far", ProductForm.CALCIUM_AMMONIUM_NITRATE, 28, 1.0, sizes(3.6, 1.2)));
        RankContext chosen = RankContext.of(28, 0.40, 850.0, null, 0.75, "far");
        MatchResult match = ProductRanking.rank(urea(0.74, 3.2), library, chosen, 1, 10);
        assertThat(match.chosen()).extracting(RankedProduct::id).isEqualTo("far");
        assertThat(match.verdict()).isEqualTo(Verdict.FIRST_GUESS_ONLY);
        RankContext gone = RankContext.of(28, 0.40, 850.0, null, 0.75, "gone");
        assertThat(ProductRanking.rank(urea(0.74, 3.2), library, gone, 1, 10).chosen())
                .extracting(RankedProduct::id)
                .isEqualTo("near");
    }

    @Test
    void outOfReachOnlyWithMargin() {
        RankContext wide = RankContext.of(36, 0.40, 850.0, null, 0.75, "").reaching(36.0, false);
        MatchResult small = ProductRanking.rank(urea(0.70, 1.8), List.of(), wide, 1, 1);
        assertThat(small.outOfReach()).isTrue();
        assertThat(small.verdict()).isEqualTo(Verdict.NOT_AT_THIS_WIDTH);
        assertThat(small.widestReachableM()).isLessThan(32);
        RankContext modest = RankContext.of(24, 0.40, 850.0, null, 0.75, "").reaching(36.0, false);
        assertThat(ProductRanking.rank(urea(0.74, 3.3), List.of(), modest, 1, 1).outOfReach())
                .isFalse();
        // a reference that proves the width outweighs the handbook
        MatchResult proven = ProductRanking.rank(urea(0.70, 1.8), List.of(tested("proof", 36, 0.70, 1.8)), wide, 1, 1);
        assertThat(proven.outOfReach()).isFalse();
        assertThat(proven.widestReachableM()).isCloseTo(36, within(1e-9));
    }

    @Test
    void withNothingKnownOfTheMachineTheThrowItselfMustDo() {
        Candidate fine = new Candidate(ProductForm.PRILLED_UREA, 0.72, 0.005, sizes(1.2, 1.2));
        MatchResult match =
                ProductRanking.rank(fine, List.of(), RankContext.of(36, 0.30, 700.0, 700.0, 0.75, ""), 1, 1);
        assertThat(match.outOfReach()).isTrue();
        assertThat(match.widestReachableM()).isLessThan(24);
        assertThat(ProductRanking.rank(urea(0.74, 3.2), List.of(), FIELD, 1, 1).outOfReach())
                .isFalse();
    }

    @Test
    void fasterDiscsAndALeverReachWider() {
        List<TestedProduct> library = List.of(tested("a", 28, 0.74, 3.2));
        Double now = ProductRanking.rank(urea(0.74, 3.2), library, FIELD, 1, 1).widestReachableM();
        RankContext faster = RankContext.of(28, 0.40, 850.0, 950.0, 0.75, "").reaching(null, true);
        Double best =
                ProductRanking.rank(urea(0.74, 3.2), library, faster, 1, 1).widestReachableM();
        assertThat(now).isCloseTo(28, within(1e-9));
        assertThat(best).isBetween(29.0, 34.0);
    }

    @Test
    void twoEquallyLikeReferencesShareTheFirstPlace() {
        List<RankedProduct> ranked = ProductRanking.rank(
                        urea(0.74, 3.2),
                        List.of(tested("a", 28, 0.75, 3.2), tested("b", 28, 0.75, 3.2)),
                        FIELD,
                        5,
                        4000)
                .ranked();
        // 4000 draws: three standard errors are 0.024
        assertThat(ranked.get(0).closestShare()).isCloseTo(0.5, within(0.024));
        assertThat(ranked.get(0).closestShare() + ranked.get(1).closestShare()).isCloseTo(1, within(1e-9));
    }

    @Test
    void oneSeedOneAnswer() {
        List<TestedProduct> library = List.of(tested("a", 28, 0.75, 3.2), tested("b", 28, 0.73, 3.1));
        assertThat(ProductRanking.rank(urea(0.74, 3.2), library, FIELD, 9, 200))
                .isEqualTo(ProductRanking.rank(urea(0.74, 3.2), library, FIELD, 9, 200));
        assertThatThrownBy(() -> ProductRanking.rank(urea(0.74, 3.2), library, FIELD, 9, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("redraws");
    }

    /** Second route: the error from straight lines against measurements redone with every granule flown. */
    @Tag("slow")
    @Test
    void theErrorIsWhatFullFlightsGive() {
        Random random = new Random(11);
        double speed = ThrowModel.outletSpeedMPerS(0.40, 850);
        double packing = Comparison.PACKING_ERROR_SAME_FORM;
        List<Double> differences = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            double own = flown(0.74, 3.0, 0.01, 0, random, speed);
            double theirs = flown(0.76, 3.3, 0.015, packing, random, speed);
            differences.add(own - theirs);
        }
        double mean = differences.stream().mapToDouble(d -> d).average().orElseThrow();
        double sd = Math.sqrt(differences.stream()
                .mapToDouble(d -> (d - mean) * (d - mean) / (differences.size() - 1))
                .sum());
        Comparison found = Comparisons.of(urea(0.74, 3.0), FIELD)
                .with(List.of(tested("a", 28, 0.76, 3.3)))
                .get(0);
        assertThat(found.throwM()).isCloseTo(mean, within(0.05));
        assertThat(found.throwErrorM()).isCloseTo(sd, within(0.06 * sd));
    }

    private static double flown(
            double bulk, double d50, double bulkError, double packing, Random random, double speed) {
        double density = ParticleDensities.kgPerM3(bulk, UREA) * Math.exp(bulkError * random.nextGaussian());
        double sigma = Math.log(1.2) + 0.01 * random.nextGaussian();
        double edge = d50 * Math.exp(0.015 * random.nextGaussian() + ThrowLine.EDGE_Z * sigma);
        return ThrowModel.distanceM(edge, density * Math.exp(packing * random.nextGaussian()), speed, 0.75);
    }
}
