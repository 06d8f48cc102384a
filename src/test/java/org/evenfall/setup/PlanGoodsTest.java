package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.Entered.lines;
import static org.evenfall.setup.PlanAssessorTest.EXACT;
import static org.evenfall.setup.PlanAssessorTest.assess;
import static org.evenfall.setup.PlanAssessorTest.planned;
import static org.evenfall.setup.TypedSetup.product;

import java.util.List;
import org.evenfall.granule.ProductForm;
import org.evenfall.rate.NitrogenEfficiency;
import org.evenfall.rate.RatePlan;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.RatePaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bags, loads and money of a plan of 200 kg/ha. */
class PlanGoodsTest {

    /**
     * 10 ha: 2 t, 3.33 bags of 600 kg, 4 to order, one for 3 ha; 2000 L hold 1600 kg, 1.25 loads. 500 per t at 46 %: 500 /
     * 460 = 1.086957 a kg; 390 at 26 %: 1.5; saved 10 × 92 × (1.5 − 1.086957) = 380. With 80 % counted 1.358696, saved 10 ×
     * 92 × 0.8 × (1.5 − 1.358696) = 104; same price at 390 × 46 / 26 × 0.8 = 552.
     */
    @Test
    void goodsAndMoney() {
        TypedSetup typed = planned()
                .type(RatePaths.AREA, "10 ha")
                .type(RatePaths.BAG_MASS, "600 kg")
                .type(RatePaths.HOPPER_VOLUME, "2000 L")
                .type(RatePaths.PRICE, "500 per t")
                .type(RatePaths.OTHER_PRICE, "390 per t")
                .type(RatePaths.OTHER_NITROGEN, "26 %");
        RatePlan plan = assess(typed).present();
        assertThat(plan.logistics().bags()).isEqualTo(10 / 3.0, EXACT);
        assertThat(plan.logistics().bagsToOrder()).isEqualTo(4, EXACT);
        assertThat(plan.logistics().haPerBag()).isEqualTo(3, EXACT);
        assertThat(plan.logistics().hopperLoads()).isEqualTo(1.25, EXACT);
        assertThat(plan.money().costPerKgN()).isEqualTo(1.086957, within(1e-6));
        assertThat(plan.money().saving()).isEqualTo(380, within(1e-6));
        RatePlan.Money less =
                assess(typed.type(RatePaths.EFFECTIVENESS, "80 %")).present().money();
        assertThat(less.costPerKgN()).isEqualTo(1.358696, within(1e-6));
        assertThat(less.saving()).isEqualTo(104, within(1e-6));
        assertThat(less.parityPricePerT()).isEqualTo(552, within(1e-6));
        assertThat(assess(typed, product(null, 46.0)).present().logistics().hopperLoads())
                .isNull();
    }

    private static TypedSetup priced() {
        return planned()
                .type(RatePaths.PRICE, "500 per t")
                .type(RatePaths.OTHER_PRICE, "420 per t")
                .type(RatePaths.OTHER_NITROGEN, "27 %")
                .choose(ProductPaths.FORM, ProductForm.GRANULAR_UREA)
                .choose(ProductPaths.TREATED, YesNo.NO);
    }

    /** Exact by definition: 420 × 46 / 27 × share. A typed share goes before a chosen one; the rate stays. */
    @ParameterizedTest
    @CsvSource({
        "UNANSWERED, '', 715.556",
        "COUNT_ALL, '', 715.556",
        "WHEAT_090, '', 644.0",
        "WHEAT_083, '', 593.911",
        "GRASS_097, '', 694.804",
        "WHEAT_083, 95 %, 679.778",
        "WHEAT_083, 80 %, 572.444"
    })
    void thePublishedSharesCountForTheMoneyOnly(NitrogenEfficiency chosen, String typed, double parityPerT) {
        Assessed<RatePlan> assessed =
                assess(priced().choose(RatePaths.NITROGEN_EFFICIENCY, chosen).type(RatePaths.EFFECTIVENESS, typed));
        assertThat(assessed.present().money().parityPricePerT()).isEqualTo(parityPerT, within(1e-3));
        assertThat(assessed.present().amounts().productKgPerHa()).isEqualTo(200, EXACT);
        assertThat(assessed.findings()).noneMatch(finding -> finding.key().equals("rate.efficiencyOfUntreated"));
    }

    /** The shares were published for untreated urea; where they deduct nothing, nothing is reported. */
    @ParameterizedTest
    @CsvSource({
        "GRANULAR_UREA, YES, WHEAT_090, true",
        "GRANULAR_UREA, NO, WHEAT_090, false",
        "GRANULAR_UREA, UNANSWERED, GRASS_097, false",
        "AMMONIUM_NITRATE, NO, GRASS_097, true",
        "GRANULAR_UREA, YES, COUNT_ALL, false",
        "OTHER, YES, UNANSWERED, false"
    })
    void aShareOfUntreatedUreaForAnotherProductIsReported(
            ProductForm form, YesNo treated, NitrogenEfficiency chosen, boolean reported) {
        assertThat(lines(assess(priced().choose(ProductPaths.FORM, form)
                                .choose(ProductPaths.TREATED, treated)
                                .choose(RatePaths.NITROGEN_EFFICIENCY, chosen))
                        .findings()))
                .filteredOn(line -> line.contains("efficiencyOfUntreated"))
                .isEqualTo(
                        reported
                                ? List.of("NOTE RATE rate.efficiencyOfUntreated /rate/plan/nitrogenEfficiency []")
                                : List.of());
    }

    /** No nitrogen counts more than once: above 100 % is refused at its field with the range. */
    @ParameterizedTest
    @CsvSource({"99.9 %, true", "100 %, true", "100.1 %, false", "120 %, false", "10 %, true", "9.9 %, false"})
    void aShareAboveAllIsRefused(String typed, boolean possible) {
        ReadSetup read =
                ReadingPass.read(priced().type(RatePaths.EFFECTIVENESS, typed).setup());
        assertThat(read.findings())
                .filteredOn(finding -> finding.key().equals("entry.impossible"))
                .hasSize(possible ? 0 : 1)
                .allSatisfy(finding -> {
                    assertThat(finding.field()).isEqualTo("/rate/plan/effectiveness");
                    assertThat(lines(List.of(finding)).get(0)).contains("10:0", "100:0 %");
                });
    }
}
