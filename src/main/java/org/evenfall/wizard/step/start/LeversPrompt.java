package org.evenfall.wizard.step.start;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** What changes the pattern. */
public final class LeversPrompt extends FormPrompt {

    private final KnownMachines machines;

    /** @param picture of the step */
    public LeversPrompt(Form form, Supplier<? extends Node> picture, KnownMachines machines) {
        super("0f", form, picture);
        this.machines = machines;
    }

    @Override
    public boolean known() {
        return machines.isKnown();
    }

    @Override
    public Node entries() {
        return EntryTable.rows(
                        form(),
                        MachinePaths.LEVERS,
                        List.of(
                                Column.text(form(), MachinePaths.LEVER_LABEL, 12),
                                Column.quantity(form(), MachinePaths.LEVER_LOWEST),
                                Column.quantity(form(), MachinePaths.LEVER_HIGHEST),
                                Column.quantity(form(), MachinePaths.LEVER_STEP),
                                Column.choice(form(), MachinePaths.LEVER_WIDER_WHEN)))
                .node();
    }

    @Override
    public Help help() {
        return Help.terms("lever", "vane").from("source.firstGuess");
    }
}
