package org.evenfall.setup;

import java.time.LocalDate;
import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.RatePaths;

/** The short way back: the next revision of a signed setup with one more bucket test, of which only the weights are blank. */
public final class RateCheckAgain {

    /** The step with what is to be typed. */
    public static final Step STEP = Step.RATE;

    private RateCheckAgain() {}

    /**
     * The next revision, everything kept, to be dated and signed anew, and a bucket test begun at the opening of the card.
     *
     * @param assessment assessment of the setup
     * @param numbers writes the conditions of the test
     * @param today date of the test
     */
    public static Setup begun(Setup setup, Assessment assessment, NumberWriter numbers, LocalDate today) {
        Setup next = Revisions.next(setup);
        Setup begun = BucketTestDraft.added(next.withCard(next.card().withDate(today.toString())), assessment, numbers);
        return atCardOpening(begun, assessment).withCard(next.card());
    }

    /** The bucket test that was begun last: what is to be done, for the one that shows it. */
    public static EntryPath<BucketEntry> toDo(Setup begun) {
        return RatePaths.BUCKET_TESTS.item(begun.rate().bucketTests().size() - 1);
    }

    /** A test within the tolerance is repeated as it was typed; after another one the opening advised stays. */
    private static Setup atCardOpening(Setup begun, Assessment assessment) {
        List<Integer> counted = assessment.rate().bucketIndexes();
        BucketResult last = assessment.rate().lastBucket();
        if (last == null || !last.agreement().withinTolerance()) {
            return begun;
        }
        BucketEntry card = begun.rate().bucketTests().get(counted.get(counted.size() - 1));
        EntryPath<BucketEntry> test = toDo(begun);
        return test.set(
                begun, test.get(begun).withOpeningLeft(card.openingLeft()).withOpeningRight(card.openingRight()));
    }
}
