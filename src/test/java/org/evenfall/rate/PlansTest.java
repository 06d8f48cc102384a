package org.evenfall.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.OpeningTable;
import org.evenfall.quantity.Interval;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlansTest {

    private static final PlanInput.Prices NO_PRICES = new PlanInput.Prices(null, null, null, 100);
    private static final PlanInput.Field FIELD = new PlanInput.Field(36.0, 12.0, 50.0);
    private static final PlanInput.Containers CONTAINERS = new PlanInput.Containers(600.0, 2000.0, 25.0);

    private static PlanInput input(PlanInput.Rate rate, PlanInput.Field field, PlanInput.Prices prices) {
        return new PlanInput(rate, field, CONTAINERS, 0.75, new PlanInput.Outlets(2, null), 5, prices);
    }

    private static PlanInput.Rate nitrogen(double kgPerHa, double percent) {
        return new PlanInput.Rate(Nutrients.productKgPerHa(kgPerHa, percent), percent);
    }

    private static RatePlan.Money money(
            @Nullable Double price, @Nullable Double other, @Nullable Double otherN, double effectiveness) {
        return Plans.of(input(nitrogen(200, 46), FIELD, new PlanInput.Prices(price, other, otherN, effectiveness)))
                .money();
    }

    @Test
    void amountsOnOneHectare() {
        RatePlan.Amounts amounts =
                Plans.of(input(nitrogen(80, 46), FIELD, NO_PRICES)).amounts();
        assertThat(amounts.nitrogenKgPerHa()).isCloseTo(80, within(1e-12));
        assertThat(amounts.productKgPerHa()).isCloseTo(173.913, within(1e-3));
        assertThat(amounts.unitsPerAcre()).isCloseTo(80 / 1.25535, within(1e-3));
    }

    /** Exact: 590/t at 46 % = 1.2826, 420/t at 27 % = 1.5556 per kg N; 50 ha × 200 kg N/ha saves 2,729. */
    @Test
    void savingAndParity() {
        RatePlan.Money money = money(590.0, 420.0, 27.0, 100);
        assertThat(money.costPerKgN()).isCloseTo(1.2826, within(1e-4));
        assertThat(money.otherCostPerKgN()).isCloseTo(1.5556, within(1e-4));
        assertThat(money.saving()).isCloseTo(2729, within(0.5));
        assertThat(money.parityPricePerT()).isCloseTo(420 * 46 / 27.0, within(1e-9));
    }

    /** At the parity price both cost the same per kg that counts, so that nothing is saved. */
    @ParameterizedTest
    @ValueSource(doubles = {60, 85, 100})
    void atTheParityPriceNothingIsSaved(double effectiveness) {
        Double parity = money(590.0, 420.0, 27.0, effectiveness).parityPricePerT();
        assertThat(parity).isCloseTo(effectiveness / 100 * 420 * 46 / 27, within(1e-9));
        RatePlan.Money even = money(parity, 420.0, 27.0, effectiveness);
        assertThat(even.costPerKgN()).isCloseTo(even.otherCostPerKgN(), within(1e-12));
        assertThat(even.saving()).isCloseTo(0, within(1e-9));
    }

    /** Exact: 46 % at 80 % counts 160 of 200 kg/ha; 50 ha × 160 × (1.5556 − 1.6033). */
    @Test
    void aDearerProductHasANegativeSaving() {
        RatePlan.Money money = money(590.0, 420.0, 27.0, 80);
        assertThat(money.saving()).isCloseTo(50 * 160 * (420 / 270.0 - 590 / 460.0 / 0.8), within(1e-9));
        assertThat(money.saving()).isNegative();
    }

    @Test
    void moneyAsFarAsPricesAreKnown() {
        assertThat(money(null, null, null, 100)).isEqualTo(new RatePlan.Money(null, null, null, null));
        assertThat(money(460.0, null, 27.0, 100)).isEqualTo(new RatePlan.Money(1.0, null, null, null));
        assertThat(money(460.0, 420.0, null, 100)).isEqualTo(new RatePlan.Money(1.0, null, null, null));
        RatePlan.Money other = money(null, 420.0, 27.0, 100);
        assertThat(other.costPerKgN()).isNull();
        assertThat(other.saving()).isNull();
        assertThat(other.parityPricePerT()).isNotNull();
        PlanInput noArea = input(
                nitrogen(200, 46),
                new PlanInput.Field(36.0, 12.0, null),
                new PlanInput.Prices(590.0, 420.0, 27.0, 100));
        assertThat(Plans.of(noArea).money().saving()).isNull();
    }

    @Test
    void bagsAndLoads() {
        RatePlan.Logistics logistics = Plans.of(
                        input(new PlanInput.Rate(200, 46), new PlanInput.Field(36.0, 12.0, 10.0), NO_PRICES))
                .logistics();
        assertThat(logistics.areaHa()).isEqualTo(10);
        assertThat(logistics.productTonnes()).isCloseTo(2.0, within(1e-9));
        assertThat(logistics.bags()).isCloseTo(3.3333, within(1e-4));
        assertThat(logistics.bagsToOrder()).isEqualTo(4);
        assertThat(logistics.haPerBag()).isCloseTo(3, within(1e-9));
        assertThat(logistics.hopperLoads()).isCloseTo(2000 / 1500.0, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"8.999, 3", "9, 3", "9.001, 4"})
    void bagsAreRoundedUpOnlyForTheOrder(double areaHa, double bags) {
        RatePlan plan =
                Plans.of(input(new PlanInput.Rate(200, 46), new PlanInput.Field(36.0, 12.0, areaHa), NO_PRICES));
        assertThat(plan.logistics().bagsToOrder()).isEqualTo(bags);
    }

    @Test
    void whatIsNotKnownGivesNothing() {
        RatePlan bare = Plans.of(new PlanInput(
                new PlanInput.Rate(200, 46),
                new PlanInput.Field(null, null, null),
                new PlanInput.Containers(null, null, null),
                null,
                new PlanInput.Outlets(2, null),
                5,
                NO_PRICES));
        assertThat(bare.logistics()).isEqualTo(new RatePlan.Logistics(null, null, null, null, null, null));
        assertThat(bare.flow()).isEqualTo(new RatePlan.Flow(null, null, null, null));
        assertThat(bare.bucket()).isEqualTo(new RatePlan.Bucket(null, null, null, null, null, null));
        RatePlan noWidth = Plans.of(input(nitrogen(80, 46), new PlanInput.Field(null, 12.0, 5.0), NO_PRICES));
        assertThat(noWidth.flow()).isEqualTo(new RatePlan.Flow(12.0, null, null, null));
        RatePlan noSpeed = Plans.of(input(nitrogen(80, 46), new PlanInput.Field(36.0, null, 5.0), NO_PRICES));
        assertThat(noSpeed.flow()).isEqualTo(new RatePlan.Flow(null, null, null, null));
    }

    @Test
    void hopperLoadsNeedVolumeAndDensity() {
        PlanInput noDensity = new PlanInput(
                new PlanInput.Rate(200, 46), FIELD, CONTAINERS, null, new PlanInput.Outlets(2, null), 5, NO_PRICES);
        assertThat(Plans.of(noDensity).logistics().hopperLoads()).isNull();
        assertThat(Plans.of(noDensity).bucket().litres()).isNull();
        // 62.6 kg/min of one outlet: 20.9 kg in 20 s are too heavy
        assertThat(Plans.of(noDensity).bucket().seconds()).isEqualTo(15);
        PlanInput noHopper = new PlanInput(
                new PlanInput.Rate(200, 46),
                FIELD,
                new PlanInput.Containers(600.0, null, null),
                0.75,
                new PlanInput.Outlets(2, null),
                5,
                NO_PRICES);
        assertThat(Plans.of(noHopper).logistics().hopperLoads()).isNull();
        assertThat(Plans.of(noHopper).bucket().seconds()).isEqualTo(15);
    }

    /** 36 m, 217 kg/ha, 12 km/h: one outlet of two fills 39.06 kg = 52 L in 30 s; a bucket of 25 L holds 10 s of it. */
    @Test
    void aShorterTimeWhereTheBucketDoesNotHoldThirtySeconds() {
        RatePlan.Bucket bucket =
                Plans.of(input(new PlanInput.Rate(217, 46), FIELD, NO_PRICES)).bucket();
        assertThat(bucket.halfMinuteKg()).isCloseTo(39.06, within(1e-9));
        assertThat(bucket.halfMinuteLitres()).isCloseTo(52.08, within(1e-9));
        assertThat(bucket.seconds()).isEqualTo(10);
        assertThat(bucket.kg()).isCloseTo(13.02, within(1e-9));
        assertThat(bucket.litres()).isCloseTo(17.36, within(1e-9));
        Interval tolerance = bucket.toleranceKg();
        assertThat(tolerance).isNotNull();
        assertThat(tolerance.low()).isCloseTo(13.02 * 0.95, within(1e-9));
        assertThat(tolerance.high()).isCloseTo(13.02 * 1.05, within(1e-9));
    }

    /** The same into a bucket large enough: 39.06 kg in 30 s and 26.04 in 20 are too heavy to carry, 19.53 in 15 are not. */
    @Test
    void aShorterTimeWhereTheCatchIsTooHeavyToCarry() {
        RatePlan.Bucket bucket = Plans.of(new PlanInput(
                        new PlanInput.Rate(217, 46),
                        FIELD,
                        new PlanInput.Containers(600.0, 2000.0, 80.0),
                        0.75,
                        new PlanInput.Outlets(2, null),
                        5,
                        NO_PRICES))
                .bucket();
        assertThat(bucket.seconds()).isEqualTo(15);
        assertThat(bucket.kg()).isCloseTo(19.53, within(1e-9));
    }

    /** Two outlets, 36 m, 10 km/h: 0.3 kg/min of one outlet for each kg/ha. At most 20 kg, whatever the bucket. */
    @ParameterizedTest
    @CsvSource({
        "133.3, 30",
        "133.4, 20",
        "199.9, 20",
        "200, 20",
        "200.1, 15",
        "266.6, 15",
        "266.7, 10",
        "400, 10",
        "400.1, "
    })
    void atMostTwentyKilogramsInABucketAndNeverBelowTenSeconds(double productKgPerHa, @Nullable Double seconds) {
        RatePlan plan = Plans.of(new PlanInput(
                new PlanInput.Rate(productKgPerHa, 46),
                new PlanInput.Field(36.0, 10.0, null),
                new PlanInput.Containers(null, null, null),
                null,
                new PlanInput.Outlets(2, null),
                5,
                NO_PRICES));
        assertThat(plan.bucket().seconds()).isEqualTo(seconds);
        assertThat(plan.bucket().halfMinuteKg()).isCloseTo(productKgPerHa * 0.15, within(1e-9));
    }

    /** One outlet, 24 m, 10 km/h, 75 kg/ha: 30 kg/min, at 0.4 kg/L 37.5 L in 30 s, 25 in 20, 18.75 in 15, 12.5 in 10. */
    @ParameterizedTest
    @CsvSource({"41.7, 30", "41.6, 20", "27.8, 20", "27.7, 15", "20.9, 15", "20.8, 10", "13.9, 10", "13.8, "})
    void theLongestTimeThatFillsTheBucketToNineTenths(double bucketL, @Nullable Double seconds) {
        RatePlan plan = Plans.of(new PlanInput(
                new PlanInput.Rate(75, 46),
                new PlanInput.Field(24.0, 10.0, null),
                new PlanInput.Containers(null, null, bucketL),
                0.4,
                new PlanInput.Outlets(1, null),
                5,
                NO_PRICES));
        assertThat(plan.flow().kgPerMin()).isCloseTo(30, within(1e-9));
        assertThat(plan.flow().outletKgPerMin()).isCloseTo(30, within(1e-9));
        assertThat(plan.bucket().seconds()).isEqualTo(seconds);
        assertThat(plan.bucket().kg() == null).isEqualTo(seconds == null);
    }

    @ParameterizedTest
    @CsvSource({"74.9, ", "75, 10", "150, 20", "225, 30", "225.1, "})
    void theFirstOpeningIsReadFromTheTableAndNeverBeyondIt(double productKgPerHa, @Nullable Double opening) {
        OpeningTable table = new OpeningTable(List.of(new FlowPoint(10, 30), new FlowPoint(30, 90)));
        RatePlan plan = Plans.of(new PlanInput(
                new PlanInput.Rate(productKgPerHa, 46),
                new PlanInput.Field(24.0, 10.0, null),
                CONTAINERS,
                0.8,
                new PlanInput.Outlets(2, table),
                5,
                NO_PRICES));
        if (opening == null) {
            assertThat(plan.flow().firstOpening()).isNull();
        } else {
            assertThat(plan.flow().firstOpening()).isCloseTo(opening, within(1e-9));
        }
        assertThat(plan.flow().outletKgPerMin()).isCloseTo(productKgPerHa * 0.2, within(1e-9));
    }

    @Test
    void refusesTheImpossible() {
        assertThatThrownBy(() -> new PlanInput.Rate(0, 46)).hasMessageContaining("productKgPerHa");
        assertThatThrownBy(() -> new PlanInput.Rate(100, 0)).hasMessageContaining("nitrogenPercent");
        assertThatThrownBy(() -> new PlanInput.Outlets(0, null)).hasMessageContaining("outlets");
        assertThatThrownBy(() -> new PlanInput.Prices(null, null, null, 0)).hasMessageContaining("effectiveness");
    }
}
