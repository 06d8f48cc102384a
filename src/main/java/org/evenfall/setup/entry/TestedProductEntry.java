package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.EnteredQuantity;

/**
 * A product tested on this machine, from its handbook, from a table, or kept from an earlier card.
 *
 * @param id short name, unique in the library
 * @param name name of the product in general words
 * @param form kind of granules
 * @param width working width of the test, m or ft
 * @param nitrogen nitrogen content, %, may be empty
 * @param bulkDensity bulk density, kg/L or kg/m³
 * @param apertures sieve apertures, finest first, mm or in, may be empty
 * @param shares share of each sieve class, finest first, %; one more than there are apertures
 * @param d50 median diameter, mm, where no sieve classes are given
 * @param testedCv coefficient of variation of that test, %, may be empty
 * @param settings settings of the test
 * @param source handbook and page, or card and date
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record TestedProductEntry(
        String id,
        String name,
        ProductForm form,
        EnteredQuantity width,
        EnteredQuantity nitrogen,
        EnteredQuantity bulkDensity,
        List<EnteredQuantity> apertures,
        List<EnteredQuantity> shares,
        EnteredQuantity d50,
        EnteredQuantity testedCv,
        SettingsEntries settings,
        String source,
        UnknownKeys unknownKeys)
        implements TestedProductEntryBuilder.With {

    /** Nothing typed yet. */
    public static final TestedProductEntry EMPTY = Blank.of(TestedProductEntry.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public TestedProductEntry {
        apertures = List.copyOf(apertures);
        shares = List.copyOf(shares);
    }
}
