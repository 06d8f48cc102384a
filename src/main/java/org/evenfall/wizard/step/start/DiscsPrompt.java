package org.evenfall.wizard.step.start;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.VisibleWhen;

/** Discs and PTO speed, as the handbook says. */
public final class DiscsPrompt extends FormPrompt {

    private final KnownMachines machines;

    /** @param picture of the step */
    public DiscsPrompt(Form form, Supplier<? extends Node> picture, KnownMachines machines) {
        super("0d", form, picture);
        this.machines = machines;
    }

    @Override
    public boolean known() {
        return machines.isKnown();
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(form().quantity(MachinePaths.DISC_DIAMETER), form().quantity(MachinePaths.DISC_SPEED_AT540)),
                form().row(form().quantity(MachinePaths.PTO_LOWEST), form().quantity(MachinePaths.PTO_HIGHEST)),
                form().row(form().quantity(MachinePaths.OUTLETS), form().quantity(MachinePaths.WANTED_HEIGHT)),
                earlierWidths());
    }

    /** Working widths are no longer asked; those of an older file are shown, so that they can be changed. */
    private Node earlierWidths() {
        return VisibleWhen.when(
                form(),
                () -> !form().model().setup().machine().workingWidths().isEmpty(),
                EntryTable.values(form(), MachinePaths.WORKING_WIDTHS, MachinePaths.WORKING_WIDTHS.path(), false)
                        .node());
    }

    @Override
    public Help help() {
        return Help.terms("vane", "ptoSpeed", "outlet").from("source.flightModel");
    }
}
