package org.evenfall.setup.path;

import org.evenfall.finding.Step;
import org.evenfall.granule.ProductForm;
import org.evenfall.setup.entry.MatchEntries;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.YesNo;

/** The closest tested product and the settings to start from: entries of step 2. */
public final class MatchPaths {

    /** The record of this step. */
    public static final Part<MatchEntries> MATCH = Part.top("match", Step.MATCH, Setup::match, Setup::withMatch);

    /** Products tested on this machine. */
    public static final Rows<MatchEntries, TestedProductEntry> LIBRARY = MATCH.rows(
            "library", "match.library", TestedProductEntry.EMPTY, MatchEntries::library, MatchEntries::withLibrary);

    /** Id of the chosen reference, empty while none is chosen. */
    public static final Text<MatchEntries> CHOSEN = MATCH.text(
                    "chosen", "match.ranked", MatchEntries::chosen, MatchEntries::withChosen)
            .neededByAssessment();

    /** Go on with no reference. */
    public static final Choice<MatchEntries, YesNo> START_WITHOUT_REFERENCE = MATCH.choice(
                    "startWithoutReference",
                    "match.startWithout",
                    YesNo.class,
                    MatchEntries::startWithoutReference,
                    MatchEntries::withStartWithoutReference)
            .neededByAssessment();

    /** Go on to a tray test although this width seems out of reach. */
    public static final Choice<MatchEntries, YesNo> TRAY_TEST_ONLY = MATCH.choice(
            "trayTestOnly",
            "match.trayTestOnly",
            YesNo.class,
            MatchEntries::trayTestOnly,
            MatchEntries::withTrayTestOnly);

    /** The settings the steps below start from. */
    public static final Part<SettingsEntries> SETTINGS =
            MATCH.part("settings", MatchEntries::settings, MatchEntries::withSettings);

    /** Short name, unique in the library. */
    public static final Text<TestedProductEntry> TESTED_ID =
            LIBRARY.row().text("id", "match.id", TestedProductEntry::id, TestedProductEntry::withId);

    /** What the handbook calls the product, in general words. */
    public static final Text<TestedProductEntry> TESTED_NAME =
            LIBRARY.row().text("name", "match.name", TestedProductEntry::name, TestedProductEntry::withName);

    /** What the granules are. */
    public static final Choice<TestedProductEntry, ProductForm> TESTED_FORM = LIBRARY.row()
            .choice("form", "product.form", ProductForm.class, TestedProductEntry::form, TestedProductEntry::withForm);

    /** Working width it was tested at. */
    public static final Quantity<TestedProductEntry> TESTED_WIDTH = LIBRARY.row()
            .quantity(
                    "width",
                    "match.width",
                    Ranges.WORKING_WIDTH,
                    TestedProductEntry::width,
                    TestedProductEntry::withWidth);

    /** Nitrogen share, %, may be empty. */
    public static final Quantity<TestedProductEntry> TESTED_NITROGEN = LIBRARY.row()
            .quantity(
                    "nitrogen", Ranges.NITROGEN_SHARE, TestedProductEntry::nitrogen, TestedProductEntry::withNitrogen);

    /** Bulk density, kg/L. */
    public static final Quantity<TestedProductEntry> TESTED_BULK_DENSITY = LIBRARY.row()
            .quantity(
                    "bulkDensity",
                    "match.densityShort",
                    Ranges.BULK_DENSITY,
                    TestedProductEntry::bulkDensity,
                    TestedProductEntry::withBulkDensity);

    /** Sieve apertures, finest first, may be empty. */
    public static final QuantityList<TestedProductEntry> TESTED_APERTURES = LIBRARY.row()
            .quantities(
                    "apertures",
                    "library.aperture",
                    Ranges.APERTURE,
                    TestedProductEntry::apertures,
                    TestedProductEntry::withApertures);

    /** Share of each class in %, finest first; one more than apertures. */
    public static final QuantityList<TestedProductEntry> TESTED_SHARES = LIBRARY.row()
            .quantities(
                    "shares",
                    "library.share",
                    Ranges.SIEVE_SHARE,
                    TestedProductEntry::shares,
                    TestedProductEntry::withShares);

    /** Median diameter, mm, where no sieve classes are given. */
    public static final Quantity<TestedProductEntry> TESTED_D50 = LIBRARY.row()
            .quantity(
                    "d50",
                    "match.median",
                    Ranges.MEDIAN_DIAMETER,
                    TestedProductEntry::d50,
                    TestedProductEntry::withD50);

    /** CV of the test it comes from, %, may be empty. */
    public static final Quantity<TestedProductEntry> TESTED_TESTED_CV = LIBRARY.row()
            .quantity("testedCv", Ranges.CV, TestedProductEntry::testedCv, TestedProductEntry::withTestedCv);

    /** The settings it was tested with. */
    public static final Nested<TestedProductEntry, SettingsEntries> TESTED_SETTINGS =
            LIBRARY.row().nested("settings", TestedProductEntry::settings, TestedProductEntry::withSettings);

    /** Where it comes from: handbook and page, or card and date. */
    public static final Text<TestedProductEntry> TESTED_SOURCE =
            LIBRARY.row().text("source", "library.source", TestedProductEntry::source, TestedProductEntry::withSource);

    private MatchPaths() {}
}
