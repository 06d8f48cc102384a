package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SievingEntry;

/**
 * The sieves that are offered until others are typed. They are kept in the setup with the first amount, so that an amount
 * never depends on a default.
 */
public final class DefaultSieves {

    /** Common practice: three sieves that part granular urea into four classes. */
    public static final List<EnteredQuantity> APERTURES = List.of(
            new EnteredQuantity("2.00", Unit.MM),
            new EnteredQuantity("3.15", Unit.MM),
            new EnteredQuantity("4.50", Unit.MM));

    private DefaultSieves() {}

    /** The apertures typed, else the default ones. */
    public static List<EnteredQuantity> apertures(ProductEntries product) {
        return product.apertures().isEmpty() ? APERTURES : product.apertures();
    }

    /** The product with other sievings, and with the sieves they were made with. */
    public static ProductEntries withSievings(ProductEntries product, List<SievingEntry> sievings) {
        return product.withSievings(sievings).withApertures(apertures(product));
    }

    /** The setup with one more blank sample; the first one counts even while it is blank. */
    public static Setup withOneSampleMore(Setup setup) {
        List<SievingEntry> sievings = new ArrayList<>(setup.product().sievings());
        sievings.add(SievingEntry.EMPTY);
        if (sievings.size() == 1) {
            sievings.add(SievingEntry.EMPTY);
        }
        return setup.withProduct(setup.product().withSievings(sievings));
    }
}
