package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Today's settings: how the machine was set at this tramline width for the product spread so far.
 *
 * @param form kind of granules spread so far
 * @param bulkDensity its bulk density, kg/L or kg/m³; empty: assumed by its kind
 * @param evenness what is known of its evenness
 * @param testedCv coefficient of variation of its tray test, %, may be empty
 * @param settings how the machine was set
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record TodayEntries(
        ProductForm form,
        EnteredQuantity bulkDensity,
        TodayEvenness evenness,
        EnteredQuantity testedCv,
        SettingsEntries settings,
        UnknownKeys unknownKeys)
        implements TodayEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final TodayEntries EMPTY = Blank.of(TodayEntries.class);
}
