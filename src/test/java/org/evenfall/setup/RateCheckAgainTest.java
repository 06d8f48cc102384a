package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;

/** From a signed card to the next revision with nothing but the weights of one bucket test. */
class RateCheckAgainTest {

    private static final LocalDate TODAY = LocalDate.of(2027, 4, 24);

    private static Setup demo() throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    private static Setup begun(Setup signed) {
        return RateCheckAgain.begun(signed, Assessor.assess(signed), TestNumbers.ENGLISH, TODAY);
    }

    @Test
    void everythingIsKeptAndOneTestIsBegun() throws Exception {
        Setup demo = demo();
        Setup begun = begun(demo);
        List<BucketEntry> tests = begun.rate().bucketTests();
        assertThat(tests).hasSize(4);
        assertThat(begun.withRate(demo.rate())).isEqualTo(Revisions.next(demo));
        assertThat(begun.rate().withBucketTests(tests.subList(0, 3))).isEqualTo(demo.rate());
        assertThat(RateCheckAgain.toDo(begun).get(begun)).isEqualTo(tests.get(3));
        assertThat(RateCheckAgain.STEP).isEqualTo(Step.RATE);
    }

    /** As the test before, of today, without its weights. */
    @Test
    void itsConditionsAreFilledIn() throws Exception {
        Setup demo = demo();
        Setup begun = begun(demo);
        BucketEntry before = demo.rate().bucketTests().get(2);
        assertThat(RateCheckAgain.toDo(begun).get(begun))
                .isEqualTo(before.withLeft(List.of()).withRight(List.of()).withDate("2027-04-24"));
    }

    @Test
    void withTheWeightsACardMayBeMade() throws Exception {
        Setup begun = begun(demo());
        Setup caught = caught(begun, "17.2 kg", "17.1 kg");
        Assessment assessment = Assessor.assess(caught.withCard(caught.card().withDate("2027-04-24")));
        assertThat(assessment.card().cardAllowed()).isTrue();
        assertThat(assessment.rate().bucketIndexes()).containsExactly(0, 1, 2, 3);
        assertThat(Assessor.assess(caught).card().missing()).containsExactly("missing.date");
    }

    private static Setup caught(Setup begun, String left, String right) {
        return RateCheckAgain.toDo(begun)
                .set(
                        begun,
                        RateCheckAgain.toDo(begun)
                                .get(begun)
                                .withLeft(List.of(EnteredQuantity.parse(left)))
                                .withRight(List.of(EnteredQuantity.parse(right))));
    }

    /** After a test off the tolerance the opening advised is set, as in every further test. */
    @Test
    void afterATestOffTheToleranceTheOpeningAdvisedIsSet() throws Exception {
        Setup demo = demo();
        Setup off = demo.withRate(
                demo.rate().withBucketTests(demo.rate().bucketTests().subList(0, 1)));
        Setup begun = begun(off);
        assertThat(Assessor.assess(off).rate().lastBucket().agreement().withinTolerance())
                .isFalse();
        assertThat(RateCheckAgain.toDo(begun).get(begun).openingLeft())
                .isNotEqualTo(off.rate().bucketTests().get(0).openingLeft());
    }

    @Test
    void withoutABucketTestTheFirstIsBegun() throws Exception {
        Setup demo = demo();
        Setup begun = begun(demo.withRate(demo.rate().withBucketTests(List.of())));
        assertThat(begun.rate().bucketTests()).hasSize(1);
        assertThat(RateCheckAgain.toDo(begun).get(begun).openingLeft().isBlank())
                .isFalse();
    }
}
