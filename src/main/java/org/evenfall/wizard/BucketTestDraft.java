package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.RatePlan;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/** A new bucket test begins with the opening that was advised, the time that fits the bucket and the same bucket. */
final class BucketTestDraft {

    private BucketTestDraft() {}

    /** The setup with one more bucket test; the earlier ones stay as they are. */
    static Setup added(Setup setup, Assessment assessment, Locale locale) {
        List<BucketEntry> tests = new ArrayList<>(setup.rate().bucketTests());
        BucketEntry before = tests.isEmpty() ? BucketEntry.EMPTY : tests.get(tests.size() - 1);
        List<BucketResult> results = assessment.rate().bucketTests();
        BucketResult last = results.isEmpty() ? null : results.get(results.size() - 1);
        RatePlan plan = assessment.rate().plan();
        Double first = plan == null ? null : plan.flow().firstOpening();
        Double seconds = plan == null ? null : plan.bucket().seconds();
        tests.add(BucketEntry.EMPTY
                .withOpeningLeft(opening(last == null ? first : last.next().left(), before.openingLeft(), locale))
                .withOpeningRight(opening(last == null ? first : last.next().right(), before.openingRight(), locale))
                .withTime(
                        !before.time().isBlank() || seconds == null
                                ? before.time()
                                : new EnteredQuantity(NumberFormats.decimals(seconds, 0, locale), Unit.S))
                .withBucketEmpty(before.bucketEmpty()));
        return setup.withRate(setup.rate().withBucketTests(tests));
    }

    /** As it can be set on a scale: one decimal at most. */
    private static EnteredQuantity opening(@Nullable Double advised, EnteredQuantity before, Locale locale) {
        if (advised == null) {
            return before;
        }
        boolean whole = Math.abs(advised - Math.rint(advised)) < 0.05;
        return new EnteredQuantity(NumberFormats.decimals(advised, whole ? 0 : 1, locale), Unit.NONE);
    }
}
