package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.evenfall.granule.FlowScaling;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EstimatedPropertiesTest {

    private static final SizeDistribution OWN = new SizeDistribution(3.1, 1.25, 0.02, 0.015, false);
    private static final SizeDistribution OTHER = new SizeDistribution(3.6, 1.15, 0.03, 0.025, false);
    private static final SizeDistribution OTHER_BOUND = new SizeDistribution(3.6, 1.10, 0.03, 0.025, true);

    private static EstimatedProperties of(
            ProductForm form, @Nullable Double bulk, @Nullable SizeDistribution sizes, @Nullable Double otherBulk) {
        return EstimatedProperties.of(form, bulk, 0.02, sizes, otherBulk, OTHER);
    }

    @Test
    void whatIsMeasuredIsTakenWithItsError() {
        EstimatedProperties found = of(ProductForm.GRANULAR_UREA, 0.77, OWN, 0.9);
        assertThat(found)
                .isEqualTo(new EstimatedProperties(
                        ProductForm.GRANULAR_UREA, 0.77, 0.02, true, 3.1, 0.02, true, Math.log(1.25), 0.015, true));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.01", "0.0099, 0.01", "0.01, 0.01", "0.0101, 0.0101"})
    void aBulkDensityIsNeverBetterThanOnePercent(double measured, double error) {
        EstimatedProperties found = EstimatedProperties.of(ProductForm.OTHER, 0.77, measured, OWN, null, null);
        assertThat(found.bulkError()).isEqualTo(error);
    }

    @ParameterizedTest
    @CsvSource({
        "GRANULAR_UREA, 0.9, 0.74, 0.04",
        "CALCIUM_AMMONIUM_NITRATE, , 1.00, 0.04",
        "OTHER, 0.9, 0.9, 0.19799",
        "OTHER, , 0.88, 0.14"
    })
    void anUnknownDensityComesFromTheBandElseFromTheOtherElseTheUsual(
            ProductForm form, @Nullable Double otherBulk, double bulk, double error) {
        EstimatedProperties found = of(form, null, OWN, otherBulk);
        assertThat(found.bulkKgPerL()).isCloseTo(bulk, within(1e-12));
        assertThat(found.bulkError()).isCloseTo(error, within(1e-5));
        assertThat(found.bulkKnown()).isFalse();
    }

    @Test
    void unknownSizesComeFromTheOtherElseTheUsual() {
        EstimatedProperties other = of(ProductForm.OTHER, 0.77, null, null);
        assertThat(other)
                .isEqualTo(new EstimatedProperties(
                        ProductForm.OTHER,
                        0.77,
                        0.02,
                        true,
                        3.6,
                        0.15 * Math.sqrt(2),
                        false,
                        Math.log(1.15),
                        0.05,
                        false));
        EstimatedProperties usual = EstimatedProperties.of(ProductForm.OTHER, 0.77, 0.02, null, null, null);
        assertThat(usual)
                .isEqualTo(new EstimatedProperties(
                        ProductForm.OTHER, 0.77, 0.02, true, 3.25, 0.15, false, 0.18, 0.05, false));
        EstimatedProperties bound = EstimatedProperties.of(ProductForm.OTHER, 0.77, 0.02, null, null, OTHER_BOUND);
        assertThat(bound.sigma()).isEqualTo(0.18);
        assertThat(bound.d50Mm()).isEqualTo(3.6);
    }

    @ParameterizedTest
    @CsvSource({"PRILLED_UREA, 2.0", "GRANULAR_UREA, 3.25", "UNANSWERED, 3.25"})
    void theUsualMedianIsThatOfTheForm(ProductForm form, double d50Mm) {
        EstimatedProperties found = EstimatedProperties.of(form, 0.75, 0.02, null, null, null);
        assertThat(found.d50Mm()).isEqualTo(d50Mm);
        assertThat(found.diameterMm(0)).isEqualTo(d50Mm);
        assertThat(found.diameterMm(-2)).isCloseTo(d50Mm * Math.exp(-0.36), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1.10, 1.10", "1.15, 1.15", "1.20, 1.15"})
    void anOwnBoundLimitsTheSpreadOfTheOther(double bound, double taken) {
        SizeDistribution sizes = new SizeDistribution(3.1, bound, 0.02, 0.015, true);
        EstimatedProperties found = of(ProductForm.OTHER, 0.77, sizes, null);
        assertThat(found.sigma()).isCloseTo(Math.log(taken), within(1e-12));
        assertThat(found.sigmaStandardError()).isEqualTo(0.05);
        assertThat(found.d50Error()).isEqualTo(0.02);
        assertThat(found.sizeKnown()).isTrue();
        assertThat(found.spreadKnown()).isFalse();
    }

    /** 0.75 / 0.59 and 0.75 / 0.56; the capped estimate of urea is that of the solid. */
    @Test
    void theGranuleDensityIsThatOfTheForm() {
        assertThat(of(ProductForm.GRANULAR_UREA, 0.75, OWN, null).granuleKgPerM3())
                .isCloseTo(1271.186, within(0.001));
        assertThat(of(ProductForm.OTHER, 0.75, OWN, null).granuleKgPerM3()).isCloseTo(1339.286, within(0.001));
        assertThat(of(ProductForm.PRILLED_UREA, 0.75, OWN, null).withBulk(0.82).granuleKgPerM3())
                .isEqualTo(1335);
    }

    /** Slopes by central differences. */
    @Test
    void slopesAreThoseOfTheFigures() {
        EstimatedProperties found = of(ProductForm.OTHER, 0.77, OWN, null);
        double h = 1e-4;
        double up = SizeDistribution.exact(3.1, Math.exp(found.sigma() + h)).spreadIndexPercent();
        double down = SizeDistribution.exact(3.1, Math.exp(found.sigma() - h)).spreadIndexPercent();
        assertThat(found.spreadIndexPercent()).isCloseTo(OWN.spreadIndexPercent(), within(1e-9));
        assertThat(found.spreadIndexSlope()).isCloseTo((up - down) / (2 * h), within(1e-2));
        double larger = FlowScaling.kgPerMin(0.77, 50, 3.1 * Math.exp(h), 9.80665);
        double smaller = FlowScaling.kgPerMin(0.77, 50, 3.1 * Math.exp(-h), 9.80665);
        assertThat(found.flowKgPerMin()).isCloseTo((larger + smaller) / 2, within(1e-5));
        assertThat(found.flowSlopeOfD50()).isCloseTo(Math.log(larger / smaller) / (2 * h), within(1e-6));
    }

    @Test
    void anotherBulkDensityChangesNothingElse() {
        EstimatedProperties found = of(ProductForm.OTHER, 0.77, OWN, null);
        assertThat(found.withBulk(0.9).bulkKgPerL()).isEqualTo(0.9);
        assertThat(found.withBulk(0.9).withBulk(0.77)).isEqualTo(found);
    }
}
