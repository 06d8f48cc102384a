package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SievingEntry;

/** How the table of sieves and samples is filled: as many sieves as are typed, as many samples as are asked for. */
public final class SieveTable {

    private SieveTable() {}

    /** The values without the blank ones at the end, so that an emptied last row is no row. */
    public static List<EnteredQuantity> withoutBlankEnd(List<EnteredQuantity> values) {
        int size = values.size();
        while (size > 0 && values.get(size - 1).isBlank()) {
            size--;
        }
        return List.copyOf(values.subList(0, size));
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
