package org.evenfall.bench;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.wizard.KeyEchoRow;
import org.evenfall.wizard.StepChangeRow;

/** The rows of the table, in its order. */
final class Rows {

    private Rows() {}

    static List<Row> all() {
        List<Row> rows = new ArrayList<>(ComputedRows.all());
        rows.add(new IntegratorRow());
        rows.add(new StreamRow());
        rows.add(new CardRow());
        rows.addAll(StartRows.all());
        rows.add(new StepChangeRow());
        rows.add(new KeyEchoRow());
        return rows;
    }
}
