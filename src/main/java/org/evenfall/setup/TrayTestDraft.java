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
import org.evenfall.trays.Advice;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.LeverMove;
import org.evenfall.trays.TrayLayout;
import org.jspecify.annotations.Nullable;

/**
 * The entries a new tray test begins with: the settings of the last test with the moves advised, before any test the
 * settings to start from; runs of the plan, openings of the last bucket test, wind and date as typed already. The catches
 * are blank.
 */
public final class TrayTestDraft {

    /** A setting is written with at most so many decimals. */
    private static final int MOST_DECIMALS = 3;

    /** A remainder smaller than this is rounding of the arithmetic, no further decimal. */
    private static final double NO_REMAINDER = 1e-6;

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
        List<BucketResult> buckets = assessment.rate().bucketTests();
        BucketResult bucket = buckets.isEmpty() ? null : buckets.get(buckets.size() - 1);
        tests.add(TrayTestEntry.EMPTY
                .withDate(setup.card().date())
                .withSettings(settings(setup, before, assessment.trays().advice(), numbers)
                        .withUnknownKeys(UnknownKeys.NONE))
                .withOpeningLeft(bucket == null ? EnteredQuantity.EMPTY : setting(bucket.openingLeft(), numbers))
                .withOpeningRight(
                        bucket == null || assessment.machine().rateSetting().byFactor()
                                ? EnteredQuantity.EMPTY
                                : setting(bucket.openingRight(), numbers))
                .withRuns(
                        plan == null
                                ? EnteredQuantity.EMPTY
                                : new EnteredQuantity(Integer.toString(plan.runsNeeded()), Unit.NONE))
                .withWind(setup.trays().wind())
                .withPositions(positions(before, assessment.trays().layout(), numbers)));
        return setup.withTrays(setup.trays().withTests(tests));
    }

    /** Trays that were moved out of a wheel mark keep their true positions, whatever is changed later. */
    private static List<EnteredQuantity> positions(
            @Nullable TrayTestEntry before, @Nullable TrayLayout layout, NumberWriter numbers) {
        if (before != null) {
            return before.positions();
        }
        return layout == null || !layout.moved() ? List.of() : positions(layout, numbers);
    }

    /** The positions of a layout as entries, m to the centimetre. */
    public static List<EnteredQuantity> positions(TrayLayout layout, NumberWriter numbers) {
        return layout.positionsM().stream()
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
            levers.put(move.lever(), setting(move.to(), numbers));
        }
        return before.settings().withLevers(levers);
    }

    /** With as many decimals as it needs. */
    private static EnteredQuantity setting(double value, NumberWriter numbers) {
        int decimals = 0;
        while (decimals < MOST_DECIMALS && remainder(value * Math.pow(10, decimals)) > NO_REMAINDER) {
            decimals++;
        }
        return new EnteredQuantity(numbers.write(value, decimals), Unit.NONE);
    }

    private static double remainder(double value) {
        return Math.abs(value - Math.rint(value));
    }
}
