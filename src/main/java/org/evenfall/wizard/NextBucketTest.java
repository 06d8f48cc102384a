package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.evenfall.quantity.Figures;
import org.evenfall.quantity.Typed;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.RatePlan;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/** A new bucket test begins with the opening that was advised, the time that fits the bucket and the same bucket. */
final class NextBucketTest {

    private NextBucketTest() {}

    /** The setup with one more bucket test; the earlier ones stay as they are. */
    static Setup added(Setup setup, Assessment assessment, Locale locale) {
        List<BucketEntry> tests = new ArrayList<>(setup.rate().bucketTests());
        BucketEntry before = tests.isEmpty() ? BucketEntry.EMPTY : tests.get(tests.size() - 1);
        List<BucketResult> results = assessment.rate().bucketTests();
        BucketResult last = results.isEmpty() ? null : results.get(results.size() - 1);
        RatePlan plan = assessment.rate().plan();
        Double first = plan == null ? null : plan.firstOpening();
        Double seconds = plan == null ? null : plan.bucketSeconds();
        tests.add(BucketEntry.EMPTY
                .withOpeningLeft(opening(last == null ? first : last.nextOpeningLeft(), before.openingLeft(), locale))
                .withOpeningRight(
                        opening(last == null ? first : last.nextOpeningRight(), before.openingRight(), locale))
                .withTime(
                        !before.time().isBlank() || seconds == null
                                ? before.time()
                                : new Typed(Figures.decimals(seconds, 0, locale), Unit.S))
                .withBucketEmpty(before.bucketEmpty()));
        return setup.withRate(setup.rate().withBucketTests(tests));
    }

    /** As it can be set on a scale: one decimal at most. */
    private static Typed opening(@Nullable Double advised, Typed before, Locale locale) {
        if (advised == null) {
            return before;
        }
        boolean whole = Math.abs(advised - Math.rint(advised)) < 0.05;
        return new Typed(Figures.decimals(advised, whole ? 0 : 1, locale), Unit.NONE);
    }
}
