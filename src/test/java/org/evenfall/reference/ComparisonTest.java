package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComparisonTest {

    /** Urea of 0.75 kg/L ± 2.67 % and 3.2 mm. */
    private static final Comparisons UREA = Comparisons.of(Examples.urea(0.75, 3.2), Examples.FIELD);

    private static Comparison with(@Nullable Double kgPerL, @Nullable SizeDistribution sizes) {
        return UREA.nearestFirst(List.of(new TestedProduct("a", "a", ProductForm.GRANULAR_UREA, 28, kgPerL, sizes)))
                .get(0);
    }

    private static double square(double value) {
        return value * value;
    }

    @Test
    void theSameProductScoresZero() {
        assertThat(with(0.75, Examples.sizes(3.2)).score()).isCloseTo(0, within(1e-12));
    }

    /** The weighted mean square by hand: weights 1, 0.25, 0.5; units are the errors of measuring, with their floors. */
    @Test
    void theScoreIsTheWeightedMeanSquareInStandardErrors() {
        Comparison found = with(0.80, new SizeDistribution(3.5, 1.25, 0.015, 0.01, false));
        EstimatedProperties product = found.product;
        double bulkError = 0.02 / 0.75;
        double throwUnit = found.productLine.errorM(bulkError, 0.015, 0.01);
        double flowUnit = Math.hypot(bulkError, product.flowSlopeOfD50() * 0.015);
        double spreadUnit = product.spreadIndexSlope() * 0.01;
        assertThat(flowUnit).isGreaterThan(0.02);
        assertThat(spreadUnit).isGreaterThan(1);
        double expected = (square(found.throwM() / throwUnit)
                        + 0.25 * square(found.lnFlow() / flowUnit)
                        + 0.5 * square(found.spreadPoints() / spreadUnit))
                / 1.75;
        assertThat(found.score()).isCloseTo(Math.sqrt(expected), within(1e-9));
        assertThat(found.throwM()).isCloseTo(found.productLine.edgeM() - found.otherLine.edgeM(), within(1e-12));
        assertThat(found.throwPercent()).isCloseTo(100 * found.throwM() / found.otherLine.edgeM(), within(1e-12));
        assertThat(found.lnFlow())
                .isCloseTo(Math.log(product.flowKgPerMin() / found.other.flowKgPerMin()), within(1e-12));
        assertThat(found.spreadPoints())
                .isCloseTo(product.spreadIndexPercent() - found.other.spreadIndexPercent(), within(1e-12));
    }

    /** Measured very well, the least errors count: 1 % of the throw, 2 % of the flow, one point. */
    @Test
    void measuringIsNeverBetterThanTheLeastErrors() {
        SizeDistribution exact = new SizeDistribution(3.2, 1.2, 0.001, 0.001, false);
        Candidate candidate = new Candidate(ProductForm.GRANULAR_UREA, 0.75, 0, exact);
        Comparison found = Comparisons.of(candidate, Examples.FIELD)
                .nearestFirst(List.of(Examples.tested(28, 0.80, 3.5)))
                .get(0);
        double throwUnit = Math.max(0.01 * found.productLine.edgeM(), found.productLine.errorM(0.01, 0.001, 0.001));
        double expected = (square(found.throwM() / throwUnit)
                        + 0.25 * square(found.lnFlow() / 0.02)
                        + 0.5 * square(found.spreadPoints()))
                / 1.75;
        assertThat(found.score()).isCloseTo(Math.sqrt(expected), within(1e-9));
    }

    /** A reference that was never sieved takes the sizes of the new product; the gap must not count as similarity. */
    @Test
    void aGapInTheDataIsNoSimilarity() {
        Comparison unsieved = with(0.75, null);
        assertThat(unsieved.throwM()).isCloseTo(0, within(1e-12));
        double gapD50 = Math.sqrt(square(0.12) - square(0.035));
        double gapSigma = Math.sqrt(square(0.05) - square(0.03));
        double throwGap =
                unsieved.otherLine.errorM(0, gapD50, gapSigma) / unsieved.productLine.errorM(0.02 / 0.75, 0.015, 0.01);
        double flowGap = unsieved.other.flowSlopeOfD50()
                * gapD50
                / Math.hypot(0.02 / 0.75, unsieved.product.flowSlopeOfD50() * 0.015);
        double spreadGap = unsieved.other.spreadIndexSlope() / unsieved.product.spreadIndexSlope() * gapSigma / 0.01;
        double expected = (square(throwGap) + 0.25 * square(flowGap) + 0.5 * square(spreadGap)) / 1.75;
        assertThat(unsieved.score())
                .isCloseTo(Math.sqrt(expected), within(1e-9))
                .isGreaterThan(2);
    }

    @Test
    void aReferenceThatIsALittleDifferentRanksBeforeOneThatIsUnknown() {
        List<Comparison> sorted = UREA.nearestFirst(List.of(
                new TestedProduct("unsieved", "b", ProductForm.GRANULAR_UREA, 28, 0.75, null),
                new TestedProduct("unweighed", "c", ProductForm.OTHER, 28, null, Examples.sizes(3.2)),
                new TestedProduct("near", "a", ProductForm.GRANULAR_UREA, 28, 0.76, Examples.sizes(3.25))));
        assertThat(sorted).extracting(comparison -> comparison.reference.id()).startsWith("near");
        assertThat(sorted.get(2).score()).isGreaterThan(1);
        assertThat(sorted.get(1).score()).isGreaterThan(1);
    }

    /** Errors of both products and of their packing, in quadrature; two forms pack less alike than one. */
    @ParameterizedTest
    @CsvSource({
        "GRANULAR_UREA, GRANULAR_UREA, 0.02",
        "GRANULAR_UREA, PRILLED_UREA, 0.04",
        "OTHER, OTHER, 0.04",
        "UNANSWERED, UNANSWERED, 0.04"
    })
    void theErrorOfTheThrow(ProductForm form, ProductForm other, double packing) {
        Candidate candidate = new Candidate(form, 0.75, 0.02, Examples.sizes(3.2));
        TestedProduct reference = new TestedProduct("a", "a", other, 28, 0.75, Examples.sizes(3.2));
        Comparison found = Comparisons.of(candidate, Examples.FIELD)
                .nearestFirst(List.of(reference))
                .get(0);
        double own = found.productLine.errorM(0.02 / 0.75, 0.015, 0.01);
        double theirs = found.otherLine.errorM(0.02, 0.015, 0.01);
        double expected = Math.sqrt(square(own) + square(theirs) + square(packing * found.otherLine.perLnDensity()));
        assertThat(found.throwErrorM()).isCloseTo(expected, within(1e-9));
    }

    /** Without errors the redrawn score is the score; each error shifts its own difference. */
    @Test
    void aRedrawShiftsTheDifferences() {
        Comparison found = with(0.80, Examples.sizes(3.5));
        double[] none = {0, 0, 0};
        assertThat(found.squaredScore(none, none, 0)).isCloseTo(square(found.score()), within(1e-9));
        // two errors of one size on both sides of one product cancel but for the different lines
        Comparison same = with(0.75, Examples.sizes(3.2));
        double ratio = (0.02 / 0.75) / 0.02;
        assertThat(same.squaredScore(new double[] {1, 1, 1}, new double[] {ratio, 1, 1}, 0))
                .isCloseTo(0, within(1e-12));
        double throwUnit = same.productLine.errorM(0.02 / 0.75, 0.015, 0.01);
        double packing = 0.02 * same.otherLine.perLnDensity() / throwUnit;
        assertThat(same.squaredScore(none, none, 1)).isCloseTo(square(packing) / 1.75, within(1e-9));
        double flowUnit = Math.hypot(0.02 / 0.75, same.product.flowSlopeOfD50() * 0.015);
        double denser = square(same.productLine.perLnDensity() * 0.02 / 0.75 / throwUnit)
                + 0.25 * square(0.02 / 0.75 / flowUnit);
        assertThat(same.squaredScore(new double[] {1, 0, 0}, none, 0)).isCloseTo(denser / 1.75, within(1e-9));
        double coarser = square(same.productLine.perLnDiameter() * 0.015 / throwUnit)
                + 0.25 * square(same.product.flowSlopeOfD50() * 0.015 / flowUnit);
        assertThat(same.squaredScore(none, new double[] {0, 1, 0}, 0)).isCloseTo(coarser / 1.75, within(1e-9));
        double wider = square(same.productLine.perLnDiameter() * 0.99446 * 0.01 / throwUnit) + 0.5;
        assertThat(same.squaredScore(none, new double[] {0, 0, 1}, 0)).isCloseTo(wider / 1.75, within(1e-9));
        assertThat(same.squaredScore(new double[] {0, 0, 1}, none, 0)).isCloseTo(wider / 1.75, within(1e-9));
    }
}
