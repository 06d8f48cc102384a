package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.PlanAssessorTest.EXACT;
import static org.evenfall.setup.PlanAssessorTest.assess;
import static org.evenfall.setup.PlanAssessorTest.planned;
import static org.evenfall.setup.TypedSetup.product;

import org.evenfall.rate.RatePlan;
import org.evenfall.setup.path.RatePaths;
import org.junit.jupiter.api.Test;

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
}
