package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.OpeningTable;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RateTest {

    private static PlanInput input(
            double n,
            double percent,
            @Nullable Double area,
            @Nullable Double price,
            @Nullable Double otherPrice,
            double effectiveness) {
        return new PlanInput(
                n,
                Nutrients.productKgPerHa(n, percent),
                percent,
                36.0,
                12.0,
                area,
                600.0,
                2000.0,
                25.0,
                0.75,
                2,
                5.0,
                null,
                price,
                otherPrice,
                27.0,
                effectiveness);
    }

    /** Irish Farmers Journal 2023, no. 753190: 40 ha × 85 kg N/ha at 1.00 and 0.85 per kg N cost 3,400 and 2,890. */
    @Test
    void costOfNitrogenAsPrinted() {
        assertThat(40 * 85 * Nutrients.costPerKgN(460, 46, 100)).isCloseTo(3400, within(1e-9));
        assertThat(40 * 85 * Nutrients.costPerKgN(391, 46, 100)).isCloseTo(2890, within(1e-9));
    }

    /** Exact: 590/t at 46 % = 1.2826, 420/t at 27 % = 1.5556 per kg N; 50 ha × 200 kg N/ha saves 2,729. */
    @Test
    void savingAndParity() {
        RatePlan plan = Plans.of(input(200, 46, 50.0, 590.0, 420.0, 100));
        assertThat(plan.costPerKgN()).isCloseTo(1.2826, within(1e-4));
        assertThat(plan.otherCostPerKgN()).isCloseTo(1.5556, within(1e-4));
        assertThat(plan.saving()).isCloseTo(2729, within(0.5));
        // common practice, no source: 875 per t of 46 % urea against about 513 per t of a 27 % product
        assertThat(Nutrients.parityPricePerT(875, 46, 27)).isCloseTo(513, within(1.0));
    }

    /** Flow, exact: 100 kg/ha, 24 m, 12 km/h; 87 kg/ha, 21 m, 10 km/h; 200 lb/ac, 60 ft, 10 mph. */
    @Test
    void flowExact() {
        assertThat(Flows.kgPerMin(100, 24, 12)).isCloseTo(48.000, within(1e-9));
        assertThat(Flows.kgPerMin(87, 21, 10)).isCloseTo(30.450, within(1e-9));
        double kgPerMin = Flows.kgPerMin(
                Unit.LB_PER_AC.to(Unit.KG_PER_HA, 200), Unit.FT.to(Unit.M, 60), Unit.MPH.to(Unit.KM_PER_H, 10));
        assertThat(Unit.KG_PER_MIN.to(Unit.LB_PER_MIN, kgPerMin)).isCloseTo(242.424, within(1e-3));
    }

    /** 36 m, 217 kg/ha, 12 km/h: one outlet fills about 39 kg = 52 L in 30 s; no bucket of 25 L holds that. */
    @Test
    void aShorterTimeWhereNoBucketHoldsThirtySeconds() {
        RatePlan plan = Plans.of(input(217 * 0.46, 46, null, null, null, 100));
        assertThat(plan.bucket30Kg()).isCloseTo(39, within(0.5));
        assertThat(plan.bucket30L()).isCloseTo(52, within(0.5));
        assertThat(plan.bucketSeconds()).isEqualTo(10);
        assertThat(plan.bucketKg()).isCloseTo(13.02, within(0.01));
        assertThat(plan.bucketLowKg()).isCloseTo(13.02 * 0.95, within(0.01));
    }

    /** FAS Scotland, Understanding Fertiliser, 10 July 2024: kg/ha × 0.8 ≈ units/acre. NIST SP 811: 1.255 35 kg/ha a unit. */
    @Test
    void unitsPerAcre() {
        assertThat(Nutrients.unitKgPerHa(UnitsBasis.HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE))
                .isCloseTo(1.25535, within(1e-5));
        assertThat(100 / Nutrients.unitKgPerHa(UnitsBasis.HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE))
                .isCloseTo(80, within(0.5));
        assertThatThrownBy(() -> Nutrients.unitKgPerHa(UnitsBasis.UNANSWERED))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Exact: the same nitrogen as urea needs 27/46 = 58.7 % of the mass. */
    @Test
    void massAgainstTheDenseProduct() {
        assertThat(Nutrients.productKgPerHa(100, 46) / Nutrients.productKgPerHa(100, 27))
                .isCloseTo(0.587, within(5e-4));
    }

    @Test
    void bagsAreRoundedUpOnlyForTheOrder() {
        RatePlan plan = Plans.of(input(92, 46, 10.0, null, null, 100));
        assertThat(plan.productTonnes()).isCloseTo(2.0, within(1e-9));
        assertThat(plan.bags()).isCloseTo(3.3333, within(1e-4));
        assertThat(plan.bagsToOrder()).isEqualTo(4);
        assertThat(plan.haPerBag()).isCloseTo(3, within(1e-9));
        assertThat(plan.hopperLoads()).isCloseTo(2000 / 1500.0, within(1e-9));
    }

    @Test
    void flowAndRateAreInverse() {
        Random random = new Random(9);
        for (int i = 0; i < 500; i++) {
            double rate = 50 + 400 * random.nextDouble();
            double width = 9 + 40 * random.nextDouble();
            double speed = 5 + 15 * random.nextDouble();
            assertThat(Flows.kgPerHa(Flows.kgPerMin(rate, width, speed), width, speed))
                    .isCloseTo(rate, within(1e-9));
        }
    }

    private static BucketAssessment.Wanted wanted(@Nullable OpeningTable table) {
        return new BucketAssessment.Wanted(80.0, 200.0, 24.0, 10.0, 2, 5, table);
    }

    private static BucketAssessment.Catch caught(double opening, double kg) {
        return new BucketAssessment.Catch(opening, opening, 30, List.of(kg, kg * 1.01), List.of(kg * 1.005, kg));
    }

    private static final OpeningTable TABLE = new OpeningTable(
            List.of(new FlowPoint(10, 30), new FlowPoint(20, 60), new FlowPoint(30, 100), new FlowPoint(40, 150)));

    @Test
    void oneTestScalesTheTable() {
        BucketResult result = BucketAssessment.assess(List.of(caught(20, 16.5)), wanted(TABLE))
                .get(0);
        assertThat(result.kgPerMin()).isCloseTo(66.25, within(0.2));
        assertThat(result.withinTolerance()).isFalse();
        assertThat(result.nextFrom()).isEqualTo(OpeningSource.TABLE_SCALED);
        assertThat(result.nextOpeningLeft()).isBetween(22.0, 24.0);
        assertThat(result.kgPerHa()).isCloseTo(Flows.kgPerHa(result.kgPerMin(), 24, 10), within(1e-9));
    }

    @Test
    void twoTestsEnclose() {
        List<BucketResult> results =
                BucketAssessment.assess(List.of(caught(20, 16.5), caught(26, 22.0)), wanted(TABLE));
        assertThat(results.get(1).nextFrom()).isEqualTo(OpeningSource.BETWEEN_MEASURED);
        assertThat(results.get(1).nextOpeningLeft()).isBetween(20.0, 26.0);
    }

    @Test
    void neverBeyondTheTable() {
        BucketResult result =
                BucketAssessment.assess(List.of(caught(35, 8)), wanted(TABLE)).get(0);
        assertThat(result.nextFrom()).isEqualTo(OpeningSource.BEYOND_TABLE);
        assertThat(result.nextOpeningLeft()).isNull();
    }

    @Test
    void withinToleranceKeepsTheOpening() {
        BucketResult result =
                BucketAssessment.assess(List.of(caught(24, 20)), wanted(TABLE)).get(0);
        assertThat(result.withinTolerance()).isTrue();
        assertThat(result.nextOpeningLeft()).isEqualTo(24);
        assertThat(result.nextFrom()).isNull();
    }

    @Test
    void unequalSidesAreNotWithinTolerance() {
        BucketAssessment.Catch uneven = new BucketAssessment.Catch(24, 24, 30, List.of(21.0), List.of(19.0));
        BucketResult result =
                BucketAssessment.assess(List.of(uneven), wanted(null)).get(0);
        assertThat(result.leftRightPercent()).isCloseTo(10, within(1e-9));
        assertThat(result.withinTolerance()).isFalse();
        assertThat(result.nextOpeningLeft()).isLessThan(24);
        assertThat(result.nextOpeningRight()).isGreaterThan(24);
    }
}
