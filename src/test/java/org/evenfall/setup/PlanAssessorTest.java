package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.TypedSetup.lines;
import static org.evenfall.setup.TypedSetup.machine;
import static org.evenfall.setup.TypedSetup.product;

import java.util.List;
import org.assertj.core.data.Offset;
import org.evenfall.machine.FlowPoint;
import org.evenfall.machine.OpeningTable;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.UnitsBasis;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.StartPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The plan. 92 kg/ha of nitrogen at 46 % are 92 / 0.46 = 200 kg/ha of product; on 24 m at 10 km/h 200 × 24 × 10 / 600 =
 * 80 kg/min, 40 kg/min an outlet of two.
 */
class PlanAssessorTest {

    static final Offset<Double> EXACT = within(1e-9);

    static TypedSetup planned() {
        return TypedSetup.blank()
                .choose(RatePaths.BASIS, RateBasis.NITROGEN)
                .type(RatePaths.NITROGEN_RATE, "92 kg/ha")
                .type(StartPaths.TRAMLINE_WIDTH, "24 m")
                .type(RatePaths.SPEED, "10 km/h");
    }

    static Assessed<RatePlan> assess(TypedSetup typed, ProductResult product) {
        return PlanAssessor.assess(typed.read(), machine(2, null), product, 10, null);
    }

    static Assessed<RatePlan> assess(TypedSetup typed) {
        return assess(typed, product(0.8, 46.0));
    }

    @Test
    void productFollowsFromNitrogenAndFlowFromProduct() {
        Assessed<RatePlan> assessed = assess(planned());
        RatePlan plan = assessed.present();
        assertThat(plan.amounts().nitrogenKgPerHa()).isEqualTo(92, EXACT);
        assertThat(plan.amounts().productKgPerHa()).isEqualTo(200, EXACT);
        assertThat(plan.flow().speedKmPerH()).isEqualTo(10, EXACT);
        assertThat(plan.flow().kgPerMin()).isEqualTo(80, EXACT);
        assertThat(plan.flow().outletKgPerMin()).isEqualTo(40, EXACT);
        // 30 s of 40 kg/min: 20 kg, within 10 % 18 to 22 kg
        assertThat(plan.bucket().kg()).isEqualTo(20, EXACT);
        assertThat(plan.bucket().toleranceKg().low()).isEqualTo(18, EXACT);
        assertThat(plan.bucket().toleranceKg().high()).isEqualTo(22, EXACT);
        assertThat(assessed.findings()).isEmpty();
    }

    @Test
    void theBasisSaysWhichRateCounts() {
        TypedSetup both = planned().type(RatePaths.PRODUCT_RATE, "150 kg/ha");
        assertThat(assess(both).present().amounts().productKgPerHa()).isEqualTo(200, EXACT);
        RatePlan byProduct =
                assess(both.choose(RatePaths.BASIS, RateBasis.PRODUCT)).present();
        // 150 kg/ha at 46 %: 69 kg/ha of nitrogen
        assertThat(byProduct.amounts().productKgPerHa()).isEqualTo(150, EXACT);
        assertThat(byProduct.amounts().nitrogenKgPerHa()).isEqualTo(69, EXACT);
    }

    /**
     * 62.5 units at 45.5 %. A unit of 1 kg/ha: 62.5 / 0.455 = 137.362637. A unit of 1.12 lb/ac, 70 lb/ac in all: 70 ×
     * 0.45359237 / 0.40468564224 = 78.459581 kg/ha, / 0.455 = 172.438639, the same as typed in lb/ac.
     */
    @ParameterizedTest
    @CsvSource({
        "62.5 units, KG_PER_HA, 137.362637",
        "'62,5 units', HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE, 172.438639",
        "70 lb/ac, UNANSWERED, 172.438639",
        "62.5 kg/ha, HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE, 137.362637"
    })
    void aUnitIsWhatItsBasisSays(String typed, UnitsBasis basis, double productKgPerHa) {
        Assessed<RatePlan> assessed = assess(
                planned().type(RatePaths.NITROGEN_RATE, typed).choose(RatePaths.UNITS_BASIS, basis),
                product(0.8, 45.5));
        assertThat(assessed.present().amounts().productKgPerHa()).isEqualTo(productKgPerHa, within(1e-6));
        assertThat(assessed.findings()).isEmpty();
    }

    @Test
    void unitsWithoutBasisGiveNoPlan() {
        Assessed<RatePlan> assessed = assess(planned().type(RatePaths.NITROGEN_RATE, "62.5 units"));
        assertThat(assessed.result()).isNull();
        assertThat(lines(assessed.findings()))
                .containsExactly(
                        "STOP RATE rate.unitsBasis at /rate/plan/unitsBasis",
                        "MISSING RATE missing.rate at /rate/plan/nitrogenRate");
    }

    @Test
    void aMissingRateIsReportedAtTheEntryThatCounts() {
        TypedSetup noNitrogen = planned().type(RatePaths.NITROGEN_RATE, "");
        assertThat(lines(assess(noNitrogen).findings()))
                .containsExactly("MISSING RATE missing.rate at /rate/plan/nitrogenRate");
        Assessed<RatePlan> noProduct = assess(planned().choose(RatePaths.BASIS, RateBasis.PRODUCT));
        assertThat(noProduct.result()).isNull();
        assertThat(lines(noProduct.findings())).containsExactly("MISSING RATE missing.rate at /rate/plan/productRate");
    }

    @Test
    void withoutTheNitrogenShareThereIsNoPlanAndNothingToReport() {
        Assessed<RatePlan> assessed = assess(planned(), product(0.8, null));
        assertThat(assessed.result()).isNull();
        assertThat(assessed.findings()).isEmpty();
    }

    /** At 50 % the product rate is twice the nitrogen rate; usual are 40 to 400, possible 10 to 1500 kg/ha. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            nullValues = "-",
            value = {
                "200; -",
                "200.1; WARNING RATE entry.unusual at /rate/plan/nitrogenRate field.productRate 400.2kg/ha~1 40~0 400kg/ha~0",
                "20; -",
                "19.9; WARNING RATE entry.unusual at /rate/plan/nitrogenRate field.productRate 39.8kg/ha~1 40~0 400kg/ha~0"
            })
    void theProductRateThatFollowsHasItsLimits(String nitrogen, String finding) {
        Assessed<RatePlan> assessed =
                assess(planned().type(RatePaths.NITROGEN_RATE, nitrogen + " kg/ha"), product(0.8, 50.0));
        assertThat(lines(assessed.findings()).stream().findFirst().orElse(null)).isEqualTo(finding);
    }

    @Test
    void anImpossibleProductRateStops() {
        // 380 / 0.25 = 1520
        assertThat(lines(assess(planned().type(RatePaths.NITROGEN_RATE, "380 kg/ha"), product(0.8, 25.0))
                        .findings()))
                .containsExactly(
                        "STOP RATE entry.impossible at /rate/plan/nitrogenRate field.productRate"
                                + " 1520kg/ha~0 10~0 1500kg/ha~0",
                        // 152 kg/min of one outlet: 25 kg even in 10 s
                        "NOTE RATE rate.noBucket at /rate/plan/bucketVolume 190L~0");
    }

    /** 40 kg/min of one outlet are 20 kg in 30 s; without a density the catch of 30 s is given in kg. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {"120, 10, -", "120.1, -, NOTE RATE rate.noBucket at /rate/plan/bucketVolume 60.05kg~0"})
    void aCatchOfTenSecondsThatIsTooHeavyIsReported(double outletKgPerMin, Double seconds, String finding) {
        TypedSetup typed = planned()
                .choose(RatePaths.BASIS, RateBasis.PRODUCT)
                .type(RatePaths.PRODUCT_RATE, "300 kg/ha")
                .type(RatePaths.SPEED, "12 km/h")
                .type(StartPaths.TRAMLINE_WIDTH, 2 * outletKgPerMin * 600 / 300 / 12 + " m");
        Assessed<RatePlan> assessed = assess(typed, product(null, 46.0));
        assertThat(assessed.present().bucket().seconds()).isEqualTo(seconds);
        assertThat(lines(assessed.findings()).stream().findFirst().orElse(null)).isEqualTo(finding);
    }

    /** 40 kg/min at 0.8 kg/L: 25 L in 30 s, 16.67 in 20, 12.5 in 15, 8.33 in 10; a bucket is filled to 90 %. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {"28, 30", "27, 20", "18.6, 20", "18.4, 15", "14, 15", "13.8, 10", "9.3, 10", "9.2, -"})
    void theBucketSetsTheTime(String litres, Double seconds) {
        Assessed<RatePlan> assessed = assess(planned().type(RatePaths.BUCKET_VOLUME, litres + " L"));
        assertThat(assessed.present().bucket().seconds()).isEqualTo(seconds);
        assertThat(lines(assessed.findings()).stream().findFirst().orElse(null))
                .isEqualTo(seconds == null ? "NOTE RATE rate.noBucket at /rate/plan/bucketVolume 25L~0" : null);
    }

    @Test
    void theTableGivesTheFirstOpeningOrIsTooShort() {
        // 80 kg/min: midway between 70 at 20 and 90 at 24 is opening 22
        Assessed<RatePlan> inside = withTable(planned(), new FlowPoint(20, 70), new FlowPoint(24, 90));
        assertThat(inside.present().flow().firstOpening()).isEqualTo(22, EXACT);
        assertThat(inside.findings()).isEmpty();
        Assessed<RatePlan> beyond = withTable(planned(), new FlowPoint(10, 30), new FlowPoint(20, 79));
        assertThat(beyond.present().flow().firstOpening()).isNull();
        assertThat(lines(beyond.findings()))
                .containsExactly("WARNING RATE rate.beyondTable at /machine/openings 80kg/min~0");
        TypedSetup noSpeed = planned().type(RatePaths.SPEED, "");
        assertThat(withTable(noSpeed, new FlowPoint(10, 30), new FlowPoint(20, 79))
                        .findings())
                .isEmpty();
    }

    private static Assessed<RatePlan> withTable(TypedSetup typed, FlowPoint... points) {
        OpeningTable table = new OpeningTable(List.of(points));
        return PlanAssessor.assess(typed.read(), machine(2, null), product(0.8, 46.0), 5, table);
    }
}
