package org.evenfall.setup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.PassEntry;
import org.evenfall.setup.entry.Setup;

/** Types a log into a setup. */
public final class Logged {

    private Logged() {}

    /** A line of the log: date, field, area, product drawn, with semicolons between them. */
    public static PassEntry pass(String line) {
        List<String> cells = new ArrayList<>(Arrays.asList(line.split(";", -1)));
        return PassEntry.EMPTY
                .withDate(cells.get(0).strip())
                .withField(cells.get(1).strip())
                .withArea(EnteredQuantity.parse(cells.get(2).strip()))
                .withProductDrawn(EnteredQuantity.parse(cells.get(3).strip()));
    }

    /** The setup with these lines as its log. */
    public static Setup in(Setup setup, String... lines) {
        return setup.withLog(
                setup.log().withPasses(Arrays.stream(lines).map(Logged::pass).toList()));
    }
}
