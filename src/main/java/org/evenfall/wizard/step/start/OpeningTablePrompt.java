package org.evenfall.wizard.step.start;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** The opening table of the handbook. */
public final class OpeningTablePrompt extends FormPrompt {

    private final KnownMachines machines;

    /** @param picture of the step */
    public OpeningTablePrompt(Form form, Supplier<? extends Node> picture, KnownMachines machines) {
        super("0g", form, picture);
        this.machines = machines;
    }

    @Override
    public boolean known() {
        return machines.isKnown();
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(
                                form().choice(MachinePaths.FLOW_TABLE_BASIS),
                                form().quantity(MachinePaths.FLOW_TABLE_DENSITY)),
                EntryTable.rows(
                                form(),
                                MachinePaths.OPENINGS,
                                List.of(
                                        Column.quantity(form(), MachinePaths.OPENING_OPENING),
                                        Column.quantity(form(), MachinePaths.OPENING_FLOW)))
                        .node());
    }

    @Override
    public Help help() {
        return Help.terms("opening", "outlet");
    }

    @Override
    public boolean asked() {
        return !form().model().setup().machine().rateSetting().byFactor();
    }
}
