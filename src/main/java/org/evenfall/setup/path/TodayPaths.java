package org.evenfall.setup.path;

import org.evenfall.granule.ProductForm;
import org.evenfall.setup.entry.MatchEntries;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.TodayEntries;
import org.evenfall.setup.entry.TodayEvenness;

/** Today's settings with the product spread so far: entries of step 2. */
public final class TodayPaths {

    /** The record of today's settings. */
    public static final Part<TodayEntries> TODAY =
            MatchPaths.MATCH.part("today", MatchEntries::today, MatchEntries::withToday);

    /** What the granules spread so far are. */
    public static final Choice<TodayEntries, ProductForm> FORM =
            TODAY.choice("form", "today.form", ProductForm.class, TodayEntries::form, TodayEntries::withForm);

    /** Bulk density of the product spread so far, kg/L or kg/m³. */
    public static final Quantity<TodayEntries> BULK_DENSITY = TODAY.quantity(
            "bulkDensity",
            "today.density",
            Ranges.BULK_DENSITY,
            TodayEntries::bulkDensity,
            TodayEntries::withBulkDensity);

    /** What is known of its evenness. */
    public static final Choice<TodayEntries, TodayEvenness> EVENNESS = TODAY.choice(
            "evenness", "today.evenness", TodayEvenness.class, TodayEntries::evenness, TodayEntries::withEvenness);

    /** CV of its tray test, %. */
    public static final Quantity<TodayEntries> TESTED_CV =
            TODAY.quantity("testedCv", "today.cv", Ranges.CV, TodayEntries::testedCv, TodayEntries::withTestedCv);

    /** How the machine was set. */
    public static final Part<SettingsEntries> SETTINGS =
            TODAY.part("settings", TodayEntries::settings, TodayEntries::withSettings);

    private TodayPaths() {}
}
