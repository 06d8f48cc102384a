package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.TypedSetup.lines;
import static org.evenfall.setup.TypedSetup.product;

import java.util.List;
import org.assertj.core.data.Offset;
import org.evenfall.machine.FactorRule;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.RatePaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two outlets, 30 kg/min wanted, caught in 30 s: each kg is 2 kg/min, so 7.5 kg on each side are right. */
class BucketTestsAssessorTest {

    private static final Offset<Double> EXACT = within(1e-9);

    private static final EntryPath<BucketEntry> FIRST = RatePaths.BUCKET_TESTS.item(0);

    private static final EntryPath<BucketEntry> SECOND = RatePaths.BUCKET_TESTS.item(1);

    private static TypedSetup test(TypedSetup typed, EntryPath<BucketEntry> at, String left, String right) {
        return typed.type(RatePaths.BUCKET_OPENING_LEFT, at, "23")
                .type(RatePaths.BUCKET_OPENING_RIGHT, at, "24,5")
                .type(RatePaths.BUCKET_TIME, at, "30 s")
                .type(RatePaths.BUCKET_LEFT, at, left.split("/"))
                .type(RatePaths.BUCKET_RIGHT, at, right.split("/"));
    }

    private static TypedSetup first(String left, String right) {
        return test(TypedSetup.blank(), FIRST, left, right);
    }

    private static Assessed<List<BucketResult>> results(Assessed<BucketTestsAssessor.Tests> assessed) {
        return new Assessed<>(assessed.present().results(), assessed.findings());
    }

    private static Assessed<List<BucketResult>> assess(TypedSetup typed, int outlets, Double flow, boolean planned) {
        return results(BucketTestsAssessor.assess(
                typed.read(),
                new BucketAssessment.Wanted(flow, 12.0, 10.0, outlets, 5, null),
                product(0.75, 46.0),
                planned));
    }

    private static Assessed<List<BucketResult>> assess(TypedSetup typed) {
        return assess(typed, 2, 30.0, true);
    }

    /**
     * Flow: 7.875 kg each are 31.5 kg/min, +5 %; 7.88 give 31.52, +5.0667 %. Sides: 200 × 0.375 / 15 = 5 %, 200 × 0.38 / 15 =
     * 5.0667 %. Repeats: 0.225 kg of 7.5 are 3 %, 0.24 are 3.2 %.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            nullValues = "-",
            value = {
                "7.5; 7.5; -",
                "7,8750; 7,8750; -",
                "7.88; 7.88; STOP RATE rate.tooMuch at /rate/bucketTests/0 5.0667%~0 5%~0",
                "7,1250; 7,1250; -",
                "7.12; 7.12; STOP RATE rate.tooLittle at /rate/bucketTests/0 5.0667%~0 5%~0",
                "7,6875; 7,3125; -",
                "7.69; 7.31; STOP RATE rate.leftRight at /rate/bucketTests/0 5.0667%~0",
                "7,3125; 7,6875; -",
                "7.31; 7.69; STOP RATE rate.leftRight at /rate/bucketTests/0 5.0667%~0",
                "7,6125/7,3875; 7.5; -",
                "7.62/7.38; 7.5; WARNING RATE rate.repeats at /rate/bucketTests/0 3.2%~1",
                "7.5; 7,6125/7,3875; -",
                "7.5; 7.38/7.62; WARNING RATE rate.repeats at /rate/bucketTests/0 3.2%~1"
            })
    void eachLimitIsHeldAtItsOwnValue(String left, String right, String finding) {
        Assessed<List<BucketResult>> assessed = assess(first(left, right));
        assertThat(lines(assessed.findings())).isEqualTo(finding == null ? List.of() : List.of(finding));
    }

    @Test
    void allThreeAreReportedTogether() {
        // 8.4 ± 0.2 and 7.6 kg: 32 kg/min, +6.6667 %; 200 × 0.8 / 16 = 10 %; 0.4 of 8.4 are 4.7619 %
        assertThat(lines(assess(first("8.6/8.2", "7.6")).findings()))
                .containsExactly(
                        "STOP RATE rate.tooMuch at /rate/bucketTests/0 6.6667%~0 5%~0",
                        "STOP RATE rate.leftRight at /rate/bucketTests/0 10%~0",
                        "WARNING RATE rate.repeats at /rate/bucketTests/0 4.7619%~1");
    }

    @Test
    void onlyTheLastTestThatCanBeUsedIsReported() {
        TypedSetup both = test(first("9", "9"), SECOND, "8", "8");
        Assessed<List<BucketResult>> two = assess(both);
        assertThat(two.present()).hasSize(2);
        assertThat(two.present().get(0).flow().totalKgPerMin()).isEqualTo(36, EXACT);
        // 32 of 30 kg/min
        assertThat(lines(two.findings()))
                .containsExactly("STOP RATE rate.tooMuch at /rate/bucketTests/1 6.6667%~0 5%~0");
        // the first has no time: the second is the only one, under its own number
        Assessed<List<BucketResult>> one = assess(both.type(RatePaths.BUCKET_TIME, FIRST, ""));
        assertThat(one.present()).hasSize(1);
        assertThat(lines(one.findings()))
                .containsExactly("STOP RATE rate.tooMuch at /rate/bucketTests/1 6.6667%~0 5%~0");
        // the second has no time: the first is reported, 36 of 30
        assertThat(lines(assess(both.type(RatePaths.BUCKET_TIME, SECOND, "")).findings()))
                .containsExactly("STOP RATE rate.tooMuch at /rate/bucketTests/0 20%~0 5%~0");
    }

    @Test
    void withoutAUsableTestOneIsMissing() {
        String missing = "MISSING RATE missing.bucketTest at /rate/bucketTests";
        assertThat(lines(assess(TypedSetup.blank()).findings())).containsExactly(missing);
        TypedSetup noWeight = first("", "");
        assertThat(lines(assess(noWeight).findings())).containsExactly(missing);
        TypedSetup noOpening = first("7.5", "7.5")
                .type(RatePaths.BUCKET_OPENING_LEFT, FIRST, "")
                .type(RatePaths.BUCKET_OPENING_RIGHT, FIRST, "");
        assertThat(lines(assess(noOpening).findings())).containsExactly(missing);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {"23, '24,5', 23, 24.5", "23, '', 23, 23", "'', '24,5', 24.5, 24.5"})
    void anOpeningTypedForOneSideCountsForBoth(String left, String right, double usedLeft, double usedRight) {
        TypedSetup typed = first("7.5", "7.4")
                .type(RatePaths.BUCKET_OPENING_LEFT, FIRST, left)
                .type(RatePaths.BUCKET_OPENING_RIGHT, FIRST, right);
        BucketResult test = assess(typed).present().get(0);
        assertThat(test.openingLeft()).isEqualTo(usedLeft);
        assertThat(test.openingRight()).isEqualTo(usedRight);
    }

    /** One side alone counts for both: 7.4 kg in 30 s are 14.8 kg/min, 29.6 in all. */
    @Test
    void oneSideAloneIsATest() {
        BucketResult left = assess(first("7.4", "")).present().get(0);
        assertThat(left.flow().rightKgPerMin()).isNull();
        assertThat(left.flow().totalKgPerMin()).isEqualTo(29.6, EXACT);
        BucketResult right = assess(first("", "7.4")).present().get(0);
        assertThat(right.flow().leftKgPerMin()).isNull();
        assertThat(right.flow().totalKgPerMin()).isEqualTo(29.6, EXACT);
    }

    /** With an empty bucket of 1 kg: 8.5 kg weighed are 7.5 kg caught; what weighs no more than the bucket is refused. */
    @Test
    void theEmptyBucketIsTakenOff() {
        TypedSetup tare = first("8.5/1.0", "8.4/0.9").type(RatePaths.BUCKET_BUCKET_EMPTY, FIRST, "1 kg");
        Assessed<List<BucketResult>> assessed = assess(tare);
        assertThat(assessed.present().get(0).flow().leftKgPerMin()).isEqualTo(15, EXACT);
        assertThat(assessed.present().get(0).flow().rightKgPerMin()).isEqualTo(14.8, EXACT);
        assertThat(lines(assessed.findings()))
                .containsExactly(
                        "STOP RATE rate.lighterThanBucket at /rate/bucketTests/0/left/1 '1.0 kg'",
                        "STOP RATE rate.lighterThanBucket at /rate/bucketTests/0/right/1 '0.9 kg'");
        TypedSetup little = first("1.1", "1.1").type(RatePaths.BUCKET_BUCKET_EMPTY, FIRST, "1 kg");
        // 0.1 kg in 30 s
        assertThat(assess(little).present().get(0).flow().leftKgPerMin()).isEqualTo(0.2, EXACT);
    }

    /** 6 % allowed: 7.96 kg of 7.5 are 6.1333 %, 7.6 1.3333 %; together 3.7 %, apart 4.6 %. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            nullValues = "-",
            value = {
                "7,9500; 7.6; -",
                "7.96; 7.6; STOP RATE rate.outletTooMuch at /rate/bucketTests/0 choice.Side.LEFT 6.1333%~1 6%~0",
                "7.6; 7.96; STOP RATE rate.outletTooMuch at /rate/bucketTests/0 choice.Side.RIGHT 6.1333%~1 6%~0",
                "7,0500; 7.4; -",
                "7.04; 7.38; STOP RATE rate.outletTooLittle at /rate/bucketTests/0 choice.Side.LEFT 6.1333%~1 6%~0",
                "7.38; 7.04; STOP RATE rate.outletTooLittle at /rate/bucketTests/0 choice.Side.RIGHT 6.1333%~1 6%~0"
            })
    void oneOutletBeyondTheToleranceStops(String left, String right, String finding) {
        Assessed<List<BucketResult>> assessed = results(BucketTestsAssessor.assess(
                first(left, right).read(),
                new BucketAssessment.Wanted(30.0, 12.0, 10.0, 2, 6, null),
                product(0.75, 46.0),
                true));
        assertThat(lines(assessed.findings())).isEqualTo(finding == null ? List.of() : List.of(finding));
    }

    @Test
    void anOutletNeverCaughtIsMissing() {
        String right = "MISSING RATE rate.outletNotCaught at /rate/bucketTests/0 choice.Side.RIGHT";
        assertThat(lines(assess(first("7.5", "")).findings())).containsExactly(right);
        assertThat(lines(assess(first("", "7.5")).findings()))
                .containsExactly("MISSING RATE rate.outletNotCaught at /rate/bucketTests/0 choice.Side.LEFT");
        assertThat(lines(assess(first("7.5", ""), 2, null, false).findings())).containsExactly(right);
        // the second test is at the same openings: each supplies what the other has not
        assertThat(assess(test(first("7.5", ""), SECOND, "", "7.4")).findings()).isEmpty();
        TypedSetup other =
                test(first("7.5", ""), SECOND, "", "7.4").type(RatePaths.BUCKET_OPENING_LEFT, SECOND, "23.1");
        assertThat(lines(assess(other).findings()))
                .containsExactly("MISSING RATE rate.outletNotCaught at /rate/bucketTests/1 choice.Side.LEFT");
        // another delivery: what was caught of the first says nothing of the second
        EntryPath<String> delivery = RatePaths.BUCKET_DELIVERY.at(FIRST);
        TypedSetup otherDelivery = new TypedSetup(
                delivery.set(test(first("7.5", ""), SECOND, "", "7.4").setup(), "first lorry"));
        assertThat(lines(assess(otherDelivery).findings()))
                .containsExactly("MISSING RATE rate.outletNotCaught at /rate/bucketTests/1 choice.Side.LEFT");
        TypedSetup sameDelivery = otherDelivery.choose(ProductPaths.DELIVERY, "first lorry ");
        assertThat(assess(sameDelivery).findings()).isEmpty();
    }

    /** Every weight is right for its time: 30 kg/min of two outlets. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            nullValues = "-",
            value = {
                "10 s; 2.5; WARNING RATE rate.shortTime at /rate/bucketTests/0/time 10s~0 4%~0",
                "14.9 s; 3,7250; WARNING RATE rate.shortTime at /rate/bucketTests/0/time 14.9s~0 2.6846%~0",
                "15 s; 3,7500; -",
                "0.25 min; 3,7500; -",
                "15.1 s; 3,7750; -"
            })
    void aTimeTooShortToBeTakenByHandIsReported(String time, String kg, String finding) {
        TypedSetup typed = first(kg, kg).type(RatePaths.BUCKET_TIME, FIRST, time);
        assertThat(lines(assess(typed).findings())).isEqualTo(finding == null ? List.of() : List.of(finding));
    }

    /** 80 kg/min of two outlets: 20 kg in 30 s. With a bucket of 1.2 kg. Above 60 kg it was a bag on a loader. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            nullValues = "-",
            value = {
                "21.1; 21.2; -",
                "21.1; 21.3; WARNING RATE rate.heavyBucket at /rate/bucketTests/0/right/0 20.1kg~1 20kg~0",
                "21.1/21.4/21.3; 21.2; WARNING RATE rate.heavyBucket at /rate/bucketTests/0/left/1 20.2kg~1 20kg~0"
            })
    void aBucketTooHeavyToCarryIsReported(String left, String right, String finding) {
        TypedSetup typed = first(left, right).type(RatePaths.BUCKET_BUCKET_EMPTY, FIRST, "1.2 kg");
        assertThat(lines(assess(typed, 2, 80.0, true).findings()))
                .isEqualTo(finding == null ? List.of() : List.of(finding));
    }

    @ParameterizedTest
    @CsvSource({"20, false", "20.1, true", "60, true", "60.1, false"})
    void whatNobodyCarriesWasNoBucket(String kg, boolean reported) {
        assertThat(lines(assess(first(kg, kg), 2, null, false).findings()).isEmpty())
                .isEqualTo(!reported);
    }

    /** The first test, short and heavy, was done again: nothing of it is printed. */
    @Test
    void warningsOfAnEarlierTestAreNotReported() {
        TypedSetup earlier = first("25", "25").type(RatePaths.BUCKET_TIME, FIRST, "9 s");
        assertThat(assess(earlier, 2, null, false).findings()).hasSize(2);
        assertThat(assess(test(earlier, SECOND, "7.5", "7.5")).findings()).isEmpty();
    }

    private static Assessed<List<BucketResult>> byFactor(TypedSetup typed, FactorRule rule) {
        return results(BucketTestsAssessor.assess(
                typed.read(),
                new BucketAssessment.Wanted(30.0, 12.0, 10.0, 2, 5, null, 0, rule),
                product(0.75, 46.0),
                true));
    }

    /** 9.3 + 8.9 kg caught, 20 kg shown. The right entry, left over from an opening, does not count. */
    @Test
    void aFactorIsHeldAgainstTheWeightShown() {
        TypedSetup typed = first("9.3", "8.9")
                .type(RatePaths.BUCKET_OPENING_LEFT, FIRST, "1,25")
                .type(RatePaths.BUCKET_TIME, FIRST, "12 s")
                .type(RatePaths.BUCKET_SHOWN, FIRST, "20 kg");
        Assessed<List<BucketResult>> assessed = byFactor(typed, FactorRule.CAUGHT_OVER_SHOWN);
        BucketResult test = assessed.present().get(0);
        assertThat(test.openingRight()).isEqualTo(1.25);
        assertThat(test.next().left()).isEqualTo(1.1375, EXACT);
        assertThat(test.kgPerHa()).isEqualTo(136.5, EXACT);
        // 12 s are not too short where the terminal counts
        assertThat(lines(assessed.findings()))
                .containsExactly("STOP RATE rate.tooLittle at /rate/bucketTests/0 9%~0 5%~0");
        assertThat(byFactor(typed, FactorRule.UNANSWERED)
                        .present()
                        .get(0)
                        .next()
                        .left())
                .isNull();
        // by hand the weight shown means nothing: 91 kg/min against 30
        assertThat(assess(typed).present().get(0).agreement().deviationPercent())
                .isEqualTo(100 * 61 / 30.0, EXACT);
    }

    @Test
    void theDensityOfTheTestIsTypedElseThatOfTheProduct() {
        assertThat(assess(first("7.5", "7.5")).present().get(0).bulkDensityKgPerL())
                .isEqualTo(0.75);
        TypedSetup typed = first("7.5", "7.5").type(RatePaths.BUCKET_BULK_DENSITY, FIRST, "0.7563 kg/L");
        assertThat(assess(typed).present().get(0).bulkDensityKgPerL()).isEqualTo(0.7563);
    }

    @Test
    void withoutAPlanOrAFlowNothingIsHeldAgainstIt() {
        TypedSetup far = first("9.6/9.0", "5");
        assertThat(assess(far).findings()).hasSize(2);
        assertThat(assess(far, 2, 30.0, false).findings()).isEmpty();
        assertThat(assess(far, 2, 30.0, false).present()).hasSize(1);
        assertThat(assess(far, 2, null, true).findings()).isEmpty();
    }

    /** One outlet into two buckets, 9.5 and 5.5 kg: 30 kg/min together, right although the buckets differ by half. */
    @Test
    void aMachineWithOneOutletIsNotBlamedForItsSides() {
        Assessed<List<BucketResult>> assessed = assess(first("9.5", "5.5"), 1, 30.0, true);
        BucketResult test = assessed.present().get(0);
        assertThat(test.flow().totalKgPerMin()).isEqualTo(30, EXACT);
        assertThat(test.agreement().leftRightPercent()).isNull();
        assertThat(test.agreement().withinTolerance()).isTrue();
        assertThat(assessed.findings()).isEmpty();
        // the same catches from two outlets: 200 × 4 / 15
        assertThat(lines(assess(first("9.5", "5.5")).findings()))
                .containsExactly("STOP RATE rate.leftRight at /rate/bucketTests/0 53.3333%~0");
    }

    private static TypedSetup with(TypedSetup typed, String delivery, String density) {
        return new TypedSetup(RatePaths.BUCKET_DELIVERY.at(FIRST).set(typed.setup(), delivery))
                .type(RatePaths.BUCKET_BULK_DENSITY, FIRST, density)
                .choose(ProductPaths.DELIVERY, "S-2");
    }

    /** Now 0.75 kg/L, alike within 1 %. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "'', '', -",
                "s-2 , 0.75 kg/L, -",
                "S-2, 0.7426 kg/L, -",
                "S-2, 0.7574 kg/L, -",
                "S-2, 0.7424 kg/L, DENSITY at /rate/bucketTests/0/bulkDensity 1~0 0.7424kg/L~2 0.75kg/L~2",
                "S-2, 0.7576 kg/L, DENSITY at /rate/bucketTests/0/bulkDensity 1~0 0.7576kg/L~2 0.75kg/L~2",
                "S-1, 0.75 kg/L, DELIVERY at /rate/bucketTests/0/delivery 1~0 'S-1' 'S-2'"
            })
    void anotherDeliveryOrDensityProvesNothing(String delivery, String density, String finding) {
        Assessed<List<BucketResult>> assessed = assess(with(first("7.5", "7.5"), delivery, density));
        assertThat(lines(assessed.findings()))
                .isEqualTo(finding == null ? List.of() : List.of("MISSING RATE rate.differs." + finding));
        assertThat(assessed.present()).hasSize(finding == null ? 1 : 0);
    }

    /** A later test with the present delivery counts; the one before is left out without a word. */
    @Test
    void onlyTheLastTestIsReported() {
        TypedSetup typed = test(with(first("7.5", "7.5"), "S-1", ""), SECOND, "7.6", "7.6");
        var assessed = BucketTestsAssessor.assess(
                typed.read(), new BucketAssessment.Wanted(30.0, 12.0, 10.0, 2, 5, null), product(0.75, 46.0), true);
        assertThat(assessed.findings()).isEmpty();
        assertThat(assessed.present().indexes()).containsExactly(1);
        assertThat(assessed.present().results()).hasSize(1);
    }
}
