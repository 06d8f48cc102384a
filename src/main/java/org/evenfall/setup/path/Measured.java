package org.evenfall.setup.path;

import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;

/** An entry whose values are numbers with a unit: one, a list of them, or one for each lever. */
public interface Measured {

    /** Between several amounts typed in one entry. */
    String PLUS = "+";

    /** The range by which a typed value is read. */
    Range range(Setup setup, EnteredQuantity typed);

    /** The range that is shown while nothing is typed. */
    default Range range(Setup setup) {
        return range(setup, EnteredQuantity.EMPTY);
    }

    /** Units that are offered, the usual one first. */
    List<Unit> units(Setup setup);

    /** Whether several amounts may be typed with a plus between them. */
    default boolean sums() {
        return false;
    }

    /** Bundle key of its label on the screen. */
    String labelKey();
}
