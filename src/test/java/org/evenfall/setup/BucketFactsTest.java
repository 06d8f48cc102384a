package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.BucketMethod;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.StartPaths;
import org.junit.jupiter.api.Test;

/** 200 kg/ha, 24 m, 10 km/h, two outlets: 80 kg/min, 40 from each. */
class BucketFactsTest {

    private static final Offset<Double> EXACT = within(1e-9);
    private static final EntryPath<BucketEntry> FIRST = RatePaths.BUCKET_TESTS.item(0);

    private static TypedSetup planned() {
        return TypedSetup.blank()
                .type(StartPaths.TRAMLINE_WIDTH, "24 m")
                .type(MachinePaths.OUTLETS, "2")
                .type(ProductPaths.NITROGEN, "46 %")
                .choose(RatePaths.BASIS, RateBasis.PRODUCT)
                .type(RatePaths.PRODUCT_RATE, "200 kg/ha")
                .type(RatePaths.SPEED, "10 km/h");
    }

    private static BucketFacts facts(TypedSetup typed) {
        return BucketFacts.of(Assessor.assess(typed.setup()), 0);
    }

    private static TypedSetup caught(String left, String right) {
        return planned()
                .type(RatePaths.BUCKET_OPENING_LEFT, FIRST, "23")
                .type(RatePaths.BUCKET_TIME, FIRST, "15 s")
                .type(RatePaths.BUCKET_LEFT, FIRST, left.split("/"))
                .type(RatePaths.BUCKET_RIGHT, FIRST, right.split("/"));
    }

    /** 40 kg/min in 15 s are 10 kg, 9.5 to 10.5 kg are good; 1.2 kg more on the scales. */
    @Test
    void aCatchIsExpectedForTheTimeTyped() {
        TypedSetup typed = planned().type(RatePaths.BUCKET_TIME, FIRST, "15 s");
        BucketFacts.Expected net = facts(typed).expected();
        assertThat(net.kg()).isEqualTo(10, EXACT);
        assertThat(net.goodKg().low()).isEqualTo(9.5, EXACT);
        assertThat(net.goodKg().high()).isEqualTo(10.5, EXACT);
        assertThat(net.scalesKg()).isNull();
        // 0.4 s of 15 s
        assertThat(net.timingShare()).isEqualTo(0.4 / 15, EXACT);
        BucketFacts.Expected gross = facts(typed.type(RatePaths.BUCKET_BUCKET_EMPTY, FIRST, "1.2 kg"))
                .expected();
        assertThat(gross.scalesKg().low()).isEqualTo(10.7, EXACT);
        assertThat(gross.scalesKg().high()).isEqualTo(11.7, EXACT);
        assertThat(gross.goodKg()).isEqualTo(net.goodKg());
    }

    /** 60 kg at 40 kg/min take 90 s; at 42 kg/min 85.714, at 38 kg/min 94.737. */
    @Test
    void aKnownWeightIsExpectedToTakeItsTime() {
        TypedSetup typed = planned().type(RatePaths.BUCKET_KNOWN_WEIGHT, FIRST, "60 kg");
        BucketFacts facts =
                facts(new TypedSetup(RatePaths.BUCKET_METHOD.at(FIRST).set(typed.setup(), BucketMethod.KNOWN_WEIGHT)));
        assertThat(facts.timed()).isTrue();
        assertThat(facts.expected().seconds()).isEqualTo(90, EXACT);
        assertThat(facts.expected().goodS().low()).isEqualTo(85.7142857, within(1e-6));
        assertThat(facts.expected().goodS().high()).isEqualTo(94.7368421, within(1e-6));
    }

    /** 100 m in 30 s are 12 km/h: the outlet has to give 48 kg/min, 12 kg in 15 s, as the test is held against it. */
    @Test
    void byHandTheMeasuredSpeedCounts() {
        TypedSetup typed = planned()
                .type(RatePaths.BUCKET_TIME, FIRST, "15 s")
                .type(RatePaths.RUN_DISTANCE, RatePaths.SPEED_RUNS.item(0), "100 m")
                .type(RatePaths.RUN_TIME, RatePaths.SPEED_RUNS.item(0), "30 s");
        assertThat(facts(typed).expected().kg()).isEqualTo(12, EXACT);
    }

    @Test
    void withoutAPlanNothingIsExpected() {
        BucketFacts facts = facts(TypedSetup.blank());
        assertThat(facts.expected()).isNull();
        assertThat(facts.result()).isNull();
        assertThat(facts.openingLeft()).isNull();
    }

    @Test
    void anotherTestIsDueUntilEveryOutletIsWithinTheTolerance() {
        assertThat(progress(planned())).isEqualTo(new BucketProgress(false, false));
        assertThat(progress(caught("10.51", ""))).isEqualTo(new BucketProgress(false, false));
        // 10.5 kg are 5 %, 10.51 5.1 %; 9.5 kg −5 %
        assertThat(progress(caught("10.5", "10.5"))).isEqualTo(new BucketProgress(true, false));
        assertThat(progress(caught("10.51", "10.51"))).isEqualTo(new BucketProgress(true, true));
        assertThat(progress(caught("9.5", "9.5"))).isEqualTo(new BucketProgress(true, false));
        assertThat(progress(caught("9.49", "9.49"))).isEqualTo(new BucketProgress(true, true));
    }

    @Test
    void aTestOfAnotherDeliveryIsDoneAgain() {
        TypedSetup typed = caught("10", "10").choose(ProductPaths.DELIVERY, "second");
        TypedSetup other = new TypedSetup(RatePaths.BUCKET_DELIVERY.at(FIRST).set(typed.setup(), "first"));
        assertThat(progress(other)).isEqualTo(new BucketProgress(true, true));
    }

    private static BucketProgress progress(TypedSetup typed) {
        return BucketProgress.of(Assessor.assess(typed.setup()));
    }
}
