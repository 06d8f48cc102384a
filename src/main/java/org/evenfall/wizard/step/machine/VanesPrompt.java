package org.evenfall.wizard.step.machine;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.wizard.form.Column;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;

/** Each vane. */
public final class VanesPrompt extends FormPrompt {

    /** @param picture of the step */
    public VanesPrompt(Form form, Supplier<? extends Node> picture) {
        super("3b", form, picture);
    }

    @Override
    public Node entries() {
        return new VBox(vanes());
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("vane").from("source.vaneWear");
    }

    private Node vanes() {
        return EntryTable.rows(
                        form(),
                        MachineCheckPaths.VANES,
                        List.of(
                                Column.choice(form(), MachineCheckPaths.VANE_DISC),
                                Column.text(form(), MachineCheckPaths.VANE_LABEL, 7),
                                Column.quantity(form(), MachineCheckPaths.VANE_LENGTH),
                                Column.quantity(form(), MachineCheckPaths.VANE_LENGTH_NEW),
                                Column.choice(form(), MachineCheckPaths.VANE_STRAIGHT_SMOOTH_UNHOLED)))
                .node();
    }
}
