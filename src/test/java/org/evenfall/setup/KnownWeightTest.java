package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.TypedSetup.lines;
import static org.evenfall.setup.TypedSetup.product;

import java.util.List;
import java.util.Locale;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.BucketMethod;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.RatePaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A known weight timed through instead of a catch; two outlets, 30 kg/min wanted, so that 1 kg takes 4 s. */
class KnownWeightTest {

    private static final EntryPath<BucketEntry> FIRST = RatePaths.BUCKET_TESTS.item(0);

    private static TypedSetup timed(String weight, String left, String right) {
        TypedSetup typed = TypedSetup.blank()
                .type(RatePaths.BUCKET_OPENING_LEFT, FIRST, "23")
                .type(RatePaths.BUCKET_OPENING_RIGHT, FIRST, "24,5")
                .type(RatePaths.BUCKET_KNOWN_WEIGHT, FIRST, weight)
                .type(RatePaths.BUCKET_LEFT_TIMES, FIRST, left.split("/"))
                .type(RatePaths.BUCKET_RIGHT_TIMES, FIRST, right.split("/"));
        return method(typed, BucketMethod.KNOWN_WEIGHT);
    }

    private static TypedSetup method(TypedSetup typed, BucketMethod method) {
        return new TypedSetup(RatePaths.BUCKET_METHOD.at(FIRST).set(typed.setup(), method));
    }

    private static Assessed<BucketTestsAssessor.Tests> assess(TypedSetup typed) {
        return BucketTestsAssessor.assess(
                typed.read(), new BucketAssessment.Wanted(30.0, 12.0, 10.0, 2, 5, null), product(0.75, 46.0), true);
    }

    /** 25 kg in 100 s are 15 kg/min; in 1.6 min 15.625. */
    @Test
    void theTimesGiveTheFlow() {
        BucketResult test =
                assess(timed("25 kg", "100 s", "1,6 min")).present().results().get(0);
        assertThat(test.openingRight()).isEqualTo(24.5);
        assertThat(test.flow().leftKgPerMin()).isEqualTo(15, within(1e-9));
        assertThat(test.flow().rightKgPerMin()).isEqualTo(15.625, within(1e-9));
        assertThat(test.agreement().withinTolerance()).isTrue();
    }

    /** 22.5 s for 6 kg are 16 kg/min: 6.6667 % too much on each side. The bucket and its time do not count. */
    @Test
    void itIsHeldAgainstTheFlowWanted() {
        TypedSetup typed = timed("6 kg", "22,5 s", "22,5 s")
                .type(RatePaths.BUCKET_TIME, FIRST, "10 s")
                .type(RatePaths.BUCKET_LEFT, FIRST, "25 kg");
        assertThat(lines(assess(typed).findings()))
                .containsExactly("STOP RATE rate.tooMuch at /rate/bucketTests/0 6.6667%~0 5%~0");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            nullValues = "-",
            value = {
                "3,7250; 14,9 s; WARNING RATE rate.shortTimed at /rate/bucketTests/0/knownWeight 14.9s~0 2.6846%~0",
                "3,7500; 15 s; -",
                "3,7750; 15,1 s; -"
            })
    void aWeightThatIsThroughTooSoonIsReported(String weight, String time, String finding) {
        assertThat(lines(assess(timed(weight, time, time)).findings()))
                .isEqualTo(finding == null ? List.of() : List.of(finding));
    }

    /** Nobody carries the known weight: it is poured in. */
    @Test
    void aHeavyWeightIsNoHeavyBucket() {
        assertThat(assess(timed("50 kg", "200 s", "200 s")).findings()).isEmpty();
    }

    @Test
    void whatIsMissingMakesNoTest() {
        String missing = "MISSING RATE missing.bucketTest at /rate/bucketTests";
        assertThat(lines(assess(timed("", "200 s", "200 s")).findings())).containsExactly(missing);
        assertThat(lines(assess(timed("50 kg", "", "")).findings())).containsExactly(missing);
        // the times are kept, but a test that is caught does not read them
        TypedSetup caught = method(timed("50 kg", "200 s", "200 s"), BucketMethod.CAUGHT_FOR_TIME);
        assertThat(lines(assess(caught).findings())).containsExactly(missing);
        TypedSetup unanswered = method(timed("50 kg", "200 s", "200 s"), BucketMethod.UNANSWERED);
        assertThat(lines(assess(unanswered).findings())).containsExactly(missing);
    }

    @Test
    void oneSideTimedLeavesTheOtherToDo() {
        assertThat(lines(assess(timed("50 kg", "200 s", "")).findings()))
                .containsExactly("MISSING RATE rate.outletNotCaught at /rate/bucketTests/0 choice.Side.RIGHT");
    }

    @Test
    void theNextTestIsMeasuredInTheSameWay() {
        var setup = timed("50 kg", "150 s", "150 s").setup();
        var next = BucketTestDraft.added(
                        setup,
                        Assessor.assess(setup),
                        (value, decimals) -> NumberFormats.decimals(value, decimals, Locale.ROOT))
                .rate()
                .bucketTests()
                .get(1);
        assertThat(next.method()).isEqualTo(BucketMethod.KNOWN_WEIGHT);
        assertThat(next.knownWeight().text()).isEqualTo("50");
        assertThat(next.leftTimes()).isEmpty();
        assertThat(next.rightTimes()).isEmpty();
    }
}
