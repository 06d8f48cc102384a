package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.EnteredQuantity;

/**
 * A product tested on this machine, typed in from its handbook, imported, or kept from an earlier card.
 *
 * @param id short name, unique in the library
 * @param name what the handbook calls the product, in general words
 * @param form what the granules are
 * @param width working width it was tested at
 * @param nitrogen nitrogen share, %, may be empty
 * @param bulkDensity bulk density, kg/L
 * @param apertures sieve apertures, finest first, may be empty
 * @param shares share of each class in %, finest first; one more than apertures
 * @param d50 median diameter, mm, where no sieve classes are given
 * @param testedCv CV of the test it comes from, %, may be empty
 * @param settings the settings it was tested with
 * @param source where it comes from: handbook and page, or card and date
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
        String source)
        implements TestedProductEntryBuilder.With {

    /** Nothing typed yet. */
    public static final TestedProductEntry EMPTY = new TestedProductEntry(
            "",
            "",
            ProductForm.UNANSWERED,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            List.of(),
            List.of(),
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            SettingsEntries.EMPTY,
            "");

    public TestedProductEntry {
        id = Objects.requireNonNullElse(id, "");
        name = Objects.requireNonNullElse(name, "");
        form = Objects.requireNonNullElse(form, ProductForm.UNANSWERED);
        width = EnteredQuantity.orEmpty(width);
        nitrogen = EnteredQuantity.orEmpty(nitrogen);
        bulkDensity = EnteredQuantity.orEmpty(bulkDensity);
        apertures = Lists.typed(apertures);
        shares = Lists.typed(shares);
        d50 = EnteredQuantity.orEmpty(d50);
        testedCv = EnteredQuantity.orEmpty(testedCv);
        settings = Objects.requireNonNullElse(settings, SettingsEntries.EMPTY);
        source = Objects.requireNonNullElse(source, "");
    }
}
