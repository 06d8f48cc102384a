package org.evenfall.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.UnknownKeys;
import org.evenfall.setup.path.Measured;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.LeverMove;
import org.evenfall.trays.TrayLayout;
import org.jspecify.annotations.Nullable;

/**
 * The entries a new tray test begins with: the settings of the last test with the moves advised, before any test the
 * settings to start from; runs of the plan, positions of the layout, openings of the last bucket test, wind and date as
 * typed already, what is set now as its conditions. The catches are blank.
 */
public final class TrayTestDraft {

    private TrayTestDraft() {}

    /**
     * The setup with one more tray test; the earlier ones stay as they are.
     *
     * @param assessment assessment of the setup
     * @param numbers writes the numbers of the draft
     */
    public static Setup added(Setup setup, Assessment assessment, NumberWriter numbers) {
        List<TrayTestEntry> tests = new ArrayList<>(setup.trays().tests());
        TrayTestEntry before = tests.isEmpty() ? null : tests.get(tests.size() - 1);
        CatchPlan plan = assessment.trays().plan();
        TrayLayout layout = assessment.trays().layout();
        List<BucketResult> buckets = assessment.rate().bucketTests();
        BucketResult bucket = buckets.isEmpty() ? null : buckets.get(buckets.size() - 1);
        TrayTestEntry next = TrayTestEntry.EMPTY
                .withDate(setup.card().date())
                .withSettings(settings(setup, before, assessment.trays().advice(), numbers)
                        .withUnknownKeys(UnknownKeys.NONE))
                .withOpeningLeft(bucket == null ? EnteredQuantity.EMPTY : ExactNumber.of(bucket.openingLeft(), numbers))
                .withOpeningRight(
                        bucket == null || assessment.machine().rateSetting().byFactor()
                                ? EnteredQuantity.EMPTY
                                : ExactNumber.of(bucket.openingRight(), numbers))
                .withRuns(
                        plan == null
                                ? EnteredQuantity.EMPTY
                                : new EnteredQuantity(Integer.toString(plan.runsNeeded()), Unit.NONE))
                .withWind(setup.trays().wind())
                .withPositions(layout == null ? List.of() : positions(layout.positionsM(), numbers));
        tests.add(ConditionDraft.stated(next, setup, assessment, numbers));
        return setup.withTrays(setup.trays().withTests(tests));
    }

    /**
     * The setup with more runs driven into the trays of a test: runs counted up, and a plus behind every catch, where that of
     * the further runs is typed; a tray that is left blank stays so.
     *
     * @param index which test, from 0
     * @param more how many more runs, at least 1
     */
    public static Setup withMoreRuns(Setup setup, int index, int more, Assessment assessment) {
        List<TrayTestEntry> tests = new ArrayList<>(setup.trays().tests());
        TrayTestEntry test = tests.get(index);
        Double driven = assessment.read().number(TrayPaths.TEST_RUNS, TrayPaths.TESTS.item(index));
        int runs = (driven == null ? 1 : (int) Math.round(driven)) + more;
        tests.set(
                index,
                test.withRuns(new EnteredQuantity(Integer.toString(runs), Unit.NONE))
                        .withCatches(test.catches().stream()
                                .map(amount -> amount.isBlank()
                                        ? amount
                                        : amount.withText(amount.text().strip() + Measured.PLUS))
                                .toList()));
        return setup.withTrays(setup.trays().withTests(tests));
    }

    /** Positions of trays as entries, m to the centimetre. */
    public static List<EnteredQuantity> positions(List<Double> placesM, NumberWriter numbers) {
        return placesM.stream()
                .map(metres -> new EnteredQuantity(numbers.write(metres, 2), Unit.M))
                .toList();
    }

    private static SettingsEntries settings(
            Setup setup, @Nullable TrayTestEntry before, @Nullable Advice advice, NumberWriter numbers) {
        if (before == null) {
            return setup.match().settings();
        }
        Map<String, EnteredQuantity> levers =
                new LinkedHashMap<>(before.settings().levers());
        for (LeverMove move : advice == null ? List.<LeverMove>of() : advice.moves()) {
            levers.put(move.lever(), ExactNumber.of(move.to(), numbers));
        }
        return before.settings().withLevers(levers);
    }
}
