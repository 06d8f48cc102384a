package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.RatePlan;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayTestEntry;
import org.jspecify.annotations.Nullable;

/**
 * The entries a new bucket test begins with.
 *
 * <ul>
 *   <li>Opening, or factor once for both sides: advised after the last test that counts, else that of the last test, before
 *       any test the handbook's.
 *   <li>Method, time, known weight and empty bucket: those of the last test, else the time in which the bucket is filled.
 * </ul>
 */
public final class BucketTestDraft {

    private BucketTestDraft() {}

    /**
     * The setup with one more bucket test; the earlier ones stay as they are.
     *
     * @param assessment assessment of the setup
     * @param numbers writes the numbers of the draft
     */
    public static Setup added(Setup setup, Assessment assessment, NumberWriter numbers) {
        List<BucketEntry> tests = new ArrayList<>(setup.rate().bucketTests());
        BucketEntry before = tests.isEmpty() ? BucketEntry.EMPTY : tests.get(tests.size() - 1);
        List<BucketResult> results = assessment.rate().bucketTests();
        BucketResult last = results.isEmpty() ? null : results.get(results.size() - 1);
        RatePlan plan = assessment.rate().plan();
        // tests of another delivery count no more, but their opening is nearer than the handbook's
        Double first = plan == null || !before.openingLeft().isBlank()
                ? null
                : plan.flow().firstOpening();
        Double seconds = plan == null ? null : plan.bucket().seconds();
        RateSetting setting = assessment.machine().rateSetting();
        Double left = last == null ? first : last.next().left();
        Double right = last == null ? first : last.next().right();
        BucketEntry next = BucketEntry.EMPTY
                .withOpeningLeft(opening(left, before.openingLeft(), setting, numbers))
                .withOpeningRight(
                        setting.byFactor()
                                ? EnteredQuantity.EMPTY
                                : opening(right, before.openingRight(), setting, numbers))
                .withMethod(before.method())
                .withKnownWeight(before.knownWeight())
                .withTime(
                        !before.time().isBlank() || seconds == null
                                ? before.time()
                                : new EnteredQuantity(numbers.write(seconds, 0), Unit.S))
                .withBucketEmpty(before.bucketEmpty())
                .withDate(setup.card().date())
                .withSettings(machineSettings(setup));
        tests.add(ConditionDraft.stated(next, setup, assessment, numbers));
        return setup.withRate(setup.rate().withBucketTests(tests));
    }

    /** Levers and PTO speed as in the last tray test begun, before any test those to start from. */
    static SettingsEntries machineSettings(Setup setup) {
        List<TrayTestEntry> tests = setup.trays().tests();
        SettingsEntries settings = tests.isEmpty()
                ? setup.match().settings()
                : tests.get(tests.size() - 1).settings();
        return SettingsEntries.EMPTY.withLevers(settings.levers()).withPtoSpeed(settings.ptoSpeed());
    }

    /** As it can be set: an opening with one decimal at most, a factor with three. */
    private static EnteredQuantity opening(
            @Nullable Double advised, EnteredQuantity before, RateSetting setting, NumberWriter numbers) {
        return advised == null
                ? before
                : new EnteredQuantity(numbers.write(advised, setting.decimals(advised)), Unit.NONE);
    }
}
