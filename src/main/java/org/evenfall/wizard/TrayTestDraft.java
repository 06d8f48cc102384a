package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.UnknownKeys;
import org.evenfall.trays.Advice;
import org.evenfall.trays.LeverMove;
import org.evenfall.trays.TrayLayout;
import org.jspecify.annotations.Nullable;

/**
 * A new tray test begins with what was advised, else with what the last one had, else with the settings to start from;
 * runs, openings, wind and date come from the plan, the last bucket test and the card.
 */
final class TrayTestDraft {

    private TrayTestDraft() {}

    /** The setup with one more tray test; the earlier ones stay as they are. */
    static Setup added(Setup setup, Assessment assessment, Locale locale) {
        List<TrayTestEntry> tests = new ArrayList<>(setup.trays().tests());
        TrayTestEntry before = tests.isEmpty() ? null : tests.get(tests.size() - 1);
        var plan = assessment.trays().plan();
        List<BucketResult> buckets = assessment.rate().bucketTests();
        BucketResult bucket = buckets.isEmpty() ? null : buckets.get(buckets.size() - 1);
        tests.add(TrayTestEntry.EMPTY
                .withDate(setup.card().date())
                .withSettings(settings(setup, before, assessment.trays().advice(), locale).withUnknownKeys(UnknownKeys.NONE))
                .withOpeningLeft(bucket == null ? EnteredQuantity.EMPTY : plain(bucket.openingLeft(), locale))
                .withOpeningRight(bucket == null ? EnteredQuantity.EMPTY : plain(bucket.openingRight(), locale))
                .withRuns(
                        plan == null
                                ? EnteredQuantity.EMPTY
                                : new EnteredQuantity(Integer.toString(plan.runsNeeded()), Unit.NONE))
                .withWind(setup.trays().wind())
                .withPositions(positions(before, assessment.trays().layout(), locale)));
        return setup.withTrays(setup.trays().withTests(tests));
    }

    /** Trays that stand aside from a wheel mark keep their true places, whatever is changed later. */
    private static List<EnteredQuantity> positions(
            @Nullable TrayTestEntry before, @Nullable TrayLayout layout, Locale locale) {
        if (before != null) {
            return before.positions();
        }
        return layout == null || !layout.moved() ? List.of() : typed(layout, locale);
    }

    /** The places of a layout as one would type them. */
    static List<EnteredQuantity> typed(TrayLayout layout, Locale locale) {
        return layout.positionsM().stream()
                .map(metres -> new EnteredQuantity(NumberFormats.decimals(metres, 2, locale), Unit.M))
                .toList();
    }

    private static SettingsEntries settings(
            Setup setup, @Nullable TrayTestEntry before, @Nullable Advice advice, Locale locale) {
        if (before == null) {
            return setup.match().settings();
        }
        Map<String, EnteredQuantity> levers =
                new LinkedHashMap<>(before.settings().levers());
        for (LeverMove move : advice == null ? List.<LeverMove>of() : advice.moves()) {
            levers.put(move.lever(), plain(move.to(), locale));
        }
        return before.settings().withLevers(levers);
    }

    private static EnteredQuantity plain(double value, Locale locale) {
        int decimals = 0;
        while (decimals < 3
                && Math.abs(value * Math.pow(10, decimals) - Math.rint(value * Math.pow(10, decimals))) > 1e-6) {
            decimals++;
        }
        return new EnteredQuantity(NumberFormats.decimals(value, decimals, locale), Unit.NONE);
    }
}
